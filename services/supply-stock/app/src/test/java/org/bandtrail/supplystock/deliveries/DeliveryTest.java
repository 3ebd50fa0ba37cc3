package org.bandtrail.supplystock.deliveries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.junit.jupiter.api.Test;

class DeliveryTest {
    private static final DeliveryId D = new DeliveryId("D-1");
    private static final DepotId NORTH = new DepotId("NORTH");
    private static final PersonId WHO = new PersonId("P-1");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-12T08:00:00Z"));

    private static DeliveredHolding reel(String id, long mm, Place into) {
        return new DeliveredHolding("reel", id, mm, null, null, null, Condition.SOUND, Money.of(100, "USD"), into);
    }

    private static DeliveredLine line(DeliveredHolding... reels) {
        return new DeliveredLine(
                1, 1, new MaterialCode("TAPE"), MaterialKind.TAPE, 2, Money.of(200, "USD"), List.of(reels));
    }

    private static DeliveryCommand receive(DeliveredLine... lines) {
        return new DeliveryCommand.Receive(
                D, new SupplierId("HOLM"), null, NORTH, "", List.of(lines), List.of(), WHO, WHEN);
    }

    private static Delivery after(Delivery delivery, DeliveryCommand command) {
        Delivery now = delivery;
        for (DeliveryEvent event : delivery.decide(command)) {
            now = now.evolve(event);
        }
        return now;
    }

    private static final DeliveredLine TWO =
            line(reel("A", 50_000, Place.setAside(NORTH)), reel("B", 50_000, Place.depot(NORTH)));
    private static final Delivery RECORDED = after(Delivery.UNKNOWN, receive(TWO));

    private static DeliveryCommand accept(String... keys) {
        return new DeliveryCommand.Accept(D, List.of(keys), Place.depot(NORTH), WHO, WHEN);
    }

    private static DeliveryCommand sendBack(String reason, String... keys) {
        return new DeliveryCommand.SendBack(D, List.of(keys), reason, WHO, WHEN);
    }

    @Test
    void what_is_set_aside_is_accepted_once_and_what_is_accepted_cannot_be_accepted() {
        assertThat(RECORDED.state())
                .containsEntry("reel/A", Delivery.State.SET_ASIDE)
                .containsEntry("reel/B", Delivery.State.ACCEPTED);
        Delivery accepted = after(RECORDED, accept("reel/A"));
        assertThat(accepted.state()).containsEntry("reel/A", Delivery.State.ACCEPTED);
        assertRefused(accepted, accept("reel/A"), "is accepted, not set aside");
        assertRefused(RECORDED, accept("reel/B"), "is accepted, not set aside");
    }

    @Test
    void what_went_back_does_not_go_back_again() {
        Delivery back = after(RECORDED, sendBack("edge crushed", "reel/A", "reel/B"));
        assertThat(back.sentBackOf(TWO)).isEqualTo(2);
        assertRefused(back, sendBack("again", "reel/B"), "went back to the supplier before");
        assertRefused(back, accept("reel/A"), "is sent back");
    }

    private static DeliveryCommand released(String key, boolean whole) {
        return new DeliveryCommand.NoteReleased(D, key, Place.depot(NORTH), whole, WHO, WHEN);
    }

    @Test
    void what_was_released_by_hand_is_not_accepted_again_and_part_of_it_leaves_the_rest_waiting() {
        Delivery part = after(RECORDED, released("reel/A", false));
        assertThat(part).isEqualTo(RECORDED);
        Delivery whole = after(part, released("reel/A", true));
        assertThat(whole.state()).containsEntry("reel/A", Delivery.State.ACCEPTED);
        assertRefused(whole, accept("reel/A"), "is accepted, not set aside");
        assertThat(whole.decide(released("reel/A", true))).isEmpty();
        assertThat(whole.decide(released("reel/OTHER", true))).isEmpty();
        Delivery back = after(whole, sendBack("edge crushed", "reel/A"));
        assertThat(back.decide(released("reel/A", true))).isEmpty();
    }

    @Test
    void refusals_say_what_is_wrong() {
        assertRefused(RECORDED, sendBack(" ", "reel/A"), "Write the reason");
        assertRefused(RECORDED, sendBack("x"), "was chosen");
        assertRefused(RECORDED, accept("reel/C"), "did not come with delivery [D-1]");
        assertRefused(RECORDED, sendBack("x", "reel/A", "reel/A"), "occurs twice");
        assertRefused(RECORDED, receive(TWO), "recorded before");
        assertRefused(Delivery.UNKNOWN, receive(), "nothing in it");
        assertRefused(Delivery.UNKNOWN, receive(line()), "nothing in it");
        assertRefused(Delivery.UNKNOWN, receive(line(reel("A", 0, Place.depot(NORTH)))), "Measure or count it");
        assertRefused(
                Delivery.UNKNOWN,
                receive(line(reel("A", 1, Place.depot(NORTH)), reel("A", 2, Place.depot(NORTH)))),
                "occurs twice");
    }

    private static void assertRefused(Delivery delivery, DeliveryCommand command, String words) {
        assertThatThrownBy(() -> delivery.decide(command))
                .isInstanceOf(DeliveryRefused.class)
                .hasMessageContaining(words);
    }
}
