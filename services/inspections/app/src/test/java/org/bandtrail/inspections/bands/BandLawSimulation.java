package org.bandtrail.inspections.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.inspections.bands.BandSamples.fitted;
import static org.bandtrail.inspections.bands.BandSamples.mesh;
import static org.bandtrail.inspections.bands.BandSamples.moves;
import static org.bandtrail.inspections.bands.BandSamples.pins;
import static org.bandtrail.inspections.bands.BandSamples.renewed;
import static org.bandtrail.inspections.bands.BandSamples.tape;
import static org.bandtrail.inspections.bands.BandSamples.told;
import static org.bandtrail.inspections.bands.BandSamples.tornDown;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** Laws of the pieces of one band over random histories, each told in a random order. */
class BandLawSimulation {
    private static final int RUNS = 5_000;

    /** Balances by reel or batch and place, after all moves; a fitting's own moves are told by site-installs. */
    private static Map<String, Long> balances(List<BandCommand> commands) {
        List<BandEvent> events = told(commands.toArray(BandCommand[]::new));
        List<Move> all = new ArrayList<>(moves(events));
        for (BandEvent event : events) {
            if (event instanceof BandEvent.FittingHeard heard) {
                heard.putUp().forEach(portion -> all.add(new Move(portion, "crew:P-07", "tree:T-1")));
            }
        }
        Map<String, Long> balances = new TreeMap<>();
        for (Move move : all) {
            balances.merge(
                    move.portion().id() + " " + move.source(), -move.portion().quantity(), Long::sum);
            balances.merge(
                    move.portion().id() + " " + move.target(), move.portion().quantity(), Long::sum);
        }
        balances.values().removeIf(quantity -> quantity == 0);
        return balances;
    }

    private static BandCommand anyCommand(RandomGenerator random) {
        int day = random.nextInt(20);
        String bag = "BAG-" + random.nextInt(3);
        Onward mesh = random.nextBoolean() ? Onward.BAG : Onward.REUSE;
        String id = "X-" + random.nextInt(1_000_000);
        Portion tape = tape("R-" + random.nextInt(3), 1 + random.nextInt(2000));
        Portion wire = mesh("M-" + random.nextInt(2), 1 + random.nextInt(2000));
        Portion pins = pins("F-" + random.nextInt(2), 1 + random.nextInt(9));
        return switch (random.nextInt(6)) {
            case 0 -> fitted(day, tape, wire, pins);
            case 1 -> fitted(day, tape);
            case 2 -> renewed(id, day, bag, mesh, tape);
            case 3 -> renewed(id, day, bag, mesh, tape, wire, pins);
            case 4 -> renewed(id, day, bag, mesh, wire);
            default -> tornDown(id, day, bag, mesh, random.nextBoolean() ? Onward.BAG : Onward.REUSE);
        };
    }

    /** One fitting per day at most: two under one identity would be one fact told twice. */
    private static List<BandCommand> distinct(List<BandCommand> history) {
        Map<Object, BandCommand> byFact = new LinkedHashMap<>();
        history.forEach(command -> byFact.putIfAbsent(
                switch (command) {
                    case BandCommand.HearOfFitting heard -> heard.fitting();
                    case BandCommand.RecordVisit visit -> visit.visit();
                    case BandCommand.RecordTeardown teardown -> teardown.teardown();
                    case BandCommand.RecordOutcome outcome -> outcome;
                },
                command));
        return new ArrayList<>(byFact.values());
    }

    @Test
    void facts_told_in_any_order_leave_everything_in_the_same_places() {
        long commands = Histories.check(RUNS, 1, 8, BandLawSimulation::anyCommand, history -> {
            List<BandCommand> facts = distinct(history);
            List<BandCommand> shuffled = new ArrayList<>(facts);
            Collections.shuffle(shuffled, new Random(facts.hashCode()));

            assertThat(balances(shuffled)).isEqualTo(balances(facts));
        });
        assertThat(commands).isGreaterThan(RUNS);
    }

    @Test
    void fitted_and_renewed_is_on_the_tree_or_bagged_or_back_in_use() {
        Histories.check(RUNS, 500_000, 8, BandLawSimulation::anyCommand, history -> {
            List<BandCommand> facts = distinct(history);
            boolean fittingKnown = facts.stream().anyMatch(BandCommand.HearOfFitting.class::isInstance);
            Map<String, Long> left = new TreeMap<>();
            balances(facts).forEach((place, quantity) -> left.merge(place.split(" ")[0], quantity, Long::sum));

            assertThat(left.values()).allMatch(sum -> sum == 0);
            if (!fittingKnown) {
                assertThat(balances(facts)).isEmpty();
            }
        });
    }

    @Test
    void no_tape_ever_comes_back_to_a_person_and_no_tree_or_bag_holds_less_than_nothing() {
        Histories.check(RUNS, 900_000, 8, BandLawSimulation::anyCommand, history -> {
            List<BandCommand> facts = distinct(history);

            assertThat(moves(told(facts.toArray(BandCommand[]::new))))
                    .noneMatch(move -> move.portion().kind() == MaterialKind.TAPE
                            && move.target().startsWith("crew:"));
            balances(facts).forEach((place, quantity) -> {
                if (place.contains("bag:") || place.contains("tree:")) {
                    assertThat(quantity).as(place).isPositive();
                }
            });
        });
    }

    @Test
    void what_the_band_says_hangs_is_what_the_moves_left_on_the_tree() {
        Histories.check(RUNS, 1_300_000, 8, BandLawSimulation::anyCommand, history -> {
            List<BandCommand> facts = distinct(history);
            Map<String, Long> hanging = new TreeMap<>();
            BandSamples.after(facts.toArray(BandCommand[]::new))
                    .hanging()
                    .forEach(portion -> hanging.merge(portion.id() + " tree:T-1", portion.quantity(), Long::sum));
            Map<String, Long> onTree = balances(facts);
            onTree.keySet().removeIf(place -> !place.contains("tree:"));

            assertThat(onTree).isEqualTo(hanging);
        });
    }
}
