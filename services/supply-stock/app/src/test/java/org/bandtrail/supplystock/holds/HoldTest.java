package org.bandtrail.supplystock.holds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class HoldTest {
    private static final HeldId REEL = new HeldId("reel:R-1");
    private static final HeldId BATCH = new HeldId("batch:B-1");
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @Test
    void a_reel_is_kept_for_one_kit_only() {
        Hold held = after(place(REEL, "K-1", 50, 50));

        assertThatExceptionOfType(HoldRefused.ReservedForAnotherKit.class)
                .isThrownBy(() -> held.decide(place(REEL, "K-2", 50, 50)))
                .withMessageContaining("Reel [R-1]")
                .withMessageContaining("kit K-1")
                .withMessageContaining("release");
        assertThatExceptionOfType(HoldRefused.ReservedForAnotherKit.class)
                .isThrownBy(() -> held.decide(takeOut(REEL, "K-2", 0, 0)));
    }

    @Test
    void its_own_kit_takes_it_out_and_the_hold_is_over() {
        Hold held = after(place(REEL, "K-1", 50, 50));

        List<HoldEvent> events = held.decide(takeOut(REEL, "K-1", 0, 50));

        assertThat(events).extracting(HoldTest::why).containsExactly(HoldEvent.Why.HANDED_OUT);
        assertThat(after(held, events).portions()).isEmpty();
    }

    @Test
    void what_the_depot_has_not_cannot_be_kept() {
        assertThatExceptionOfType(HoldRefused.NotInTheDepot.class)
                .isThrownBy(() -> Hold.NONE.decide(place(REEL, "K-1", 50, 0)))
                .withMessageContaining("NORTH");
        assertThatExceptionOfType(HoldRefused.TooLittleLeft.class)
                .isThrownBy(() -> Hold.NONE.decide(place(BATCH, "K-1", 51, 50)));
    }

    @Test
    void pieces_of_a_batch_are_kept_for_several_kits_as_far_as_they_go() {
        Hold held = after(place(BATCH, "K-1", 60, 100));

        assertThat(held.decide(place(BATCH, "K-2", 40, 100))).hasSize(1);
        assertThatExceptionOfType(HoldRefused.TooLittleLeft.class)
                .isThrownBy(() -> held.decide(place(BATCH, "K-2", 41, 100)))
                .withMessageContaining("40 left");
        assertThatExceptionOfType(HoldRefused.TooLittleLeft.class)
                .isThrownBy(() -> held.decide(takeOut(BATCH, "K-2", 41, 100)));
        assertThat(held.decide(takeOut(BATCH, "K-2", 40, 100))).isEmpty();
    }

    @Test
    void a_hold_lapses_at_its_moment_and_the_next_who_asks_is_told_in_the_books() {
        Hold held = after(place(REEL, "K-1", 50, 50));
        Occurred late = Occurred.at(NOON.plusSeconds(3_600));

        List<HoldEvent> events = held.decide(new HoldCommand.Place(
                REEL, new KitId("K-2"), new DepotId("NORTH"), 50, 50, NOON.plusSeconds(9_000), keeper(), late));

        assertThat(events).extracting(HoldTest::why).containsExactly(HoldEvent.Why.LAPSED, null);
        assertThat(after(held, events).portions()).containsOnlyKeys("K-2");
    }

    @Test
    void releasing_what_is_not_held_changes_nothing() {
        HoldCommand release = new HoldCommand.Release(REEL, new KitId("K-1"), keeper(), Occurred.at(NOON));

        assertThat(Hold.NONE.decide(release)).isEmpty();
        assertThat(after(place(REEL, "K-1", 50, 50)).decide(release))
                .extracting(HoldTest::why)
                .containsExactly(HoldEvent.Why.RELEASED);
    }

    @Test
    void only_reels_and_batches_are_held() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HeldId("kit:K-1"))
                .withMessageContaining("[kit:K-1]");
    }

    private static HoldEvent.@Nullable Why why(HoldEvent event) {
        return event instanceof HoldEvent.Ended ended ? ended.why() : null;
    }

    private static HoldCommand place(HeldId held, String kit, long quantity, long there) {
        return new HoldCommand.Place(
                held,
                new KitId(kit),
                new DepotId("NORTH"),
                quantity,
                there,
                NOON.plusSeconds(3_600),
                keeper(),
                Occurred.at(NOON));
    }

    private static HoldCommand takeOut(HeldId held, String kit, long quantity, long there) {
        return new HoldCommand.TakeOut(held, new KitId(kit), quantity, there, keeper(), Occurred.at(NOON));
    }

    private static PersonId keeper() {
        return new PersonId("P-01");
    }

    private static Hold after(HoldCommand command) {
        return after(Hold.NONE, Hold.NONE.decide(command));
    }

    private static Hold after(Hold hold, List<HoldEvent> events) {
        Hold next = hold;
        for (HoldEvent event : events) {
            next = next.evolve(event);
        }
        return next;
    }
}
