package org.bandtrail.inspections.bags;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.inspections.bands.BandSamples.DOER;
import static org.bandtrail.inspections.bands.BandSamples.onDay;
import static org.bandtrail.inspections.bands.BandSamples.tape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.bandtrail.inspections.bags.BagCommand.NoteContents;
import org.bandtrail.inspections.bags.BagCommand.TakeAway;
import org.bandtrail.inspections.bags.BagEvent.ContentsFollowed;
import org.bandtrail.inspections.bags.BagEvent.TakenAway;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

class BagTest {
    private static final BagId BAG = new BagId("BAG-1");

    private static NoteContents filled(int day, Portion portion) {
        return new NoteContents(BAG, List.of(new Move(portion, "tree:T-1", "bag:BAG-1")), DOER, onDay(day));
    }

    private static NoteContents takenBack(int day, Portion portion) {
        return new NoteContents(BAG, List.of(new Move(portion, "bag:BAG-1", "bag:BAG-2")), DOER, onDay(day));
    }

    private static TakeAway gone(int day, String load) {
        return new TakeAway(BAG, new LoadId(load), "CARRIER-2", DOER, onDay(day));
    }

    private static List<BagEvent> told(List<? extends BagCommand> commands) {
        Bag bag = Bag.UNKNOWN;
        List<BagEvent> all = new ArrayList<>();
        for (BagCommand command : commands) {
            for (BagEvent event : bag.decide(command)) {
                all.add(event);
                bag = bag.evolve(event);
            }
        }
        return all;
    }

    private static BagEvent last(BagCommand... commands) {
        return told(List.of(commands)).getLast();
    }

    @Test
    void a_bag_that_leaves_takes_its_contents_to_the_load() {
        TakenAway gone = (TakenAway) last(filled(3, tape("R-1", 1200)), filled(4, tape("R-2", 800)), gone(9, "L-1"));

        assertThat(gone.moves())
                .containsExactly(
                        new Move(tape("R-1", 1200), "bag:BAG-1", "disposed:L-1"),
                        new Move(tape("R-2", 800), "bag:BAG-1", "disposed:L-1"));
        assertThat(gone.flags()).isEmpty();
    }

    @Test
    void contents_told_after_the_bag_left_follow_it() {
        ContentsFollowed late = (ContentsFollowed) last(gone(9, "L-1"), filled(3, tape("R-1", 1200)));

        assertThat(late.load()).isEqualTo(new LoadId("L-1"));
        assertThat(late.moves()).containsExactly(new Move(tape("R-1", 1200), "bag:BAG-1", "disposed:L-1"));
    }

    @Test
    void what_goes_in_after_the_bag_left_stays_for_the_next_load() {
        List<BagEvent> events = told(List.of(gone(9, "L-1"), filled(10, tape("R-1", 1200)), gone(12, "L-2")));

        assertThat(((TakenAway) events.getLast()).moves())
                .containsExactly(new Move(tape("R-1", 1200), "bag:BAG-1", "disposed:L-2"));
    }

    @Test
    void a_bag_nobody_knows_and_one_that_is_gone_already_are_accepted_and_flagged() {
        assertThat(((TakenAway) last(gone(9, "L-1"))).flags()).containsExactly(BagFlag.BAG_NOT_KNOWN_YET);
        assertThat(((TakenAway) last(filled(3, tape("R-1", 1)), gone(9, "L-1"), gone(10, "L-2"))).flags())
                .containsExactly(BagFlag.BAG_ALREADY_GONE);
    }

    @Test
    void the_same_load_told_twice_is_known_once() {
        assertThat(told(List.of(filled(3, tape("R-1", 1)), gone(9, "L-1"), gone(9, "L-1"))))
                .hasSize(2);
    }

    @Test
    void what_had_not_gone_in_after_all_comes_back_out_of_the_load() {
        ContentsFollowed back =
                (ContentsFollowed) last(filled(3, tape("R-1", 1200)), gone(9, "L-1"), takenBack(3, tape("R-1", 1200)));

        assertThat(back.moves()).containsExactly(new Move(tape("R-1", 1200), "disposed:L-1", "bag:BAG-1"));
    }

    @Test
    void contents_and_loads_told_in_any_order_end_in_the_same_places() {
        Histories.check(5_000, 7, 8, BagTest::anyCommand, history -> {
            List<BagCommand> shuffled = new ArrayList<>(history);
            Collections.shuffle(shuffled, new Random(history.hashCode()));

            assertThat(balances(shuffled)).isEqualTo(balances(history));
            balances(history).forEach((place, quantity) -> {
                if (!place.contains("tree:")) {
                    assertThat(quantity).as(place).isPositive();
                }
            });
        });
    }

    private static BagCommand anyCommand(RandomGenerator random) {
        int day = random.nextInt(10);
        return random.nextInt(3) == 0
                ? gone(day, "L-" + day)
                : filled(day, tape("R-" + random.nextInt(2), 1 + random.nextInt(2000)));
    }

    private static Map<String, Long> balances(List<BagCommand> commands) {
        Map<String, Long> balances = new TreeMap<>();
        for (BagEvent event : told(commands)) {
            for (Move move : event.moves()) {
                balances.merge(
                        move.portion().id() + " " + move.source(),
                        -move.portion().quantity(),
                        Long::sum);
                balances.merge(
                        move.portion().id() + " " + move.target(),
                        move.portion().quantity(),
                        Long::sum);
            }
        }
        balances.values().removeIf(quantity -> quantity == 0);
        return balances;
    }
}
