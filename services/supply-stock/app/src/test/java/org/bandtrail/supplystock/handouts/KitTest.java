package org.bandtrail.supplystock.handouts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.Pick;
import org.junit.jupiter.api.Test;

class KitTest {
    private static final KitId KIT = new KitId("K-1");
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final PersonId ANNA = new PersonId("P-07");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    private static final MaterialCode TAPE = new MaterialCode("TAPE-127");

    @Test
    void a_kit_is_reserved_handed_out_and_signed_for_by_the_one_who_has_it() {
        Kit kit = after(Kit.UNKNOWN, reserve(), handOut(), new KitCommand.Sign(KIT, ANNA, NOW));

        assertThat(kit.stage()).isEqualTo(Kit.Stage.OUT);
        assertThat(kit.signed()).isTrue();
        assertThat(kit.decide(new KitCommand.Sign(KIT, ANNA, NOW)))
                .as("signing twice changes nothing")
                .isEmpty();
    }

    @Test
    void the_counter_cannot_sign_for_somebody_and_nobody_signs_for_what_is_not_out() {
        assertThatExceptionOfType(KitRefused.SignedBySomebodyElse.class)
                .isThrownBy(() -> after(Kit.UNKNOWN, handOut(), new KitCommand.Sign(KIT, KEEPER, NOW)))
                .withMessageContaining("P-07")
                .withMessageContaining("P-01");
        assertThatExceptionOfType(KitRefused.KitNotOut.class)
                .isThrownBy(() -> after(Kit.UNKNOWN, reserve(), new KitCommand.Sign(KIT, ANNA, NOW)))
                .withMessageContaining("reserved");
    }

    @Test
    void a_released_kit_names_what_is_free_again_and_goes_out_no_more() {
        Kit reserved = after(Kit.UNKNOWN, reserve());

        List<KitEvent> events = reserved.decide(release());

        assertThat(events)
                .containsExactly(new KitEvent.Released(
                        KIT, List.of(new HeldId("reel:R-1"), new HeldId("batch:B-1")), "rain", KEEPER, NOW));
        Kit released = reserved.evolve(events.getFirst());
        assertThatExceptionOfType(KitRefused.KitWasReleased.class).isThrownBy(() -> released.decide(handOut()));
        assertThatExceptionOfType(KitRefused.KitNotReserved.class).isThrownBy(() -> released.decide(release()));
    }

    @Test
    void a_number_is_used_once() {
        assertThatExceptionOfType(KitRefused.KitNumberTaken.class)
                .isThrownBy(() -> after(Kit.UNKNOWN, handOut(), reserve()))
                .withMessageContaining("handed out");
        assertThatExceptionOfType(KitRefused.KitAlreadyHandedOut.class)
                .isThrownBy(() -> after(Kit.UNKNOWN, handOut(), handOut()));
    }

    @Test
    void a_kit_with_nothing_in_it_is_no_kit() {
        assertThatExceptionOfType(KitRefused.KitEmpty.class).isThrownBy(() -> after(Kit.UNKNOWN, reserve(List.of())));
    }

    private static Kit after(Kit kit, KitCommand... commands) {
        Kit next = kit;
        for (KitCommand command : commands) {
            for (KitEvent event : next.decide(command)) {
                next = next.evolve(event);
            }
        }
        return next;
    }

    private static KitCommand reserve() {
        Place depot = Place.depot(new DepotId("NORTH"));
        return reserve(List.of(
                new Pick("R-1", TAPE, MaterialKind.TAPE, depot, 50_000, 1_348, List.of()),
                new Pick("B-1", new MaterialCode("PIN"), MaterialKind.FASTENER, depot, 100, 9, List.of())));
    }

    private static KitCommand reserve(List<Pick> picks) {
        KitRule rule = new KitRule(
                Length.ofMm(50), Length.ofMm(19), Length.ofMm(229), Length.ofMm(150), Pieces.of(4), "common practice");
        return new KitCommand.Reserve(
                KIT,
                new DepotId("NORTH"),
                new CrewId("C-1"),
                ANNA,
                List.of(),
                rule,
                picks,
                NOW.recorded().plusSeconds(60),
                KEEPER,
                NOW);
    }

    private static KitCommand handOut() {
        return new KitCommand.HandOut(
                KIT,
                new DepotId("NORTH"),
                new CrewId("C-1"),
                ANNA,
                List.of(new KitLine("R-1", TAPE, MaterialKind.TAPE, 50_000)),
                KEEPER,
                NOW);
    }

    private static KitCommand release() {
        return new KitCommand.Release(KIT, "rain", KEEPER, NOW);
    }
}
