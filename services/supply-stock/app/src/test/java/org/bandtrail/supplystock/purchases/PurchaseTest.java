package org.bandtrail.supplystock.purchases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.junit.jupiter.api.Test;

class PurchaseTest {
    private static final PurchaseId PO = new PurchaseId("PO-1");
    private static final PersonId WHO = new PersonId("P-1");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));

    private static OrderedLine line(int number, MaterialKind kind, OrderUnit unit, String content, long units) {
        return new OrderedLine(
                number,
                new MaterialCode("M-" + kind),
                kind,
                Packing.of(kind, unit, content),
                units,
                3501,
                1,
                null,
                null);
    }

    private static final OrderedLine REELS = line(1, MaterialKind.TAPE, OrderUnit.REEL, "55 yd", 10);
    private static final OrderedLine METRES = line(2, MaterialKind.MESH, OrderUnit.METRE, "", 100);

    private static Purchase placed(OrderedLine... lines) {
        return after(
                Purchase.UNKNOWN,
                new PurchaseCommand.Place(
                        PO,
                        new SupplierId("HOLM"),
                        new DepotId("NORTH"),
                        "USD",
                        List.of(lines),
                        LocalDate.of(2026, 5, 13),
                        WHO,
                        WHEN));
    }

    private static Purchase after(Purchase purchase, PurchaseCommand command) {
        Purchase now = purchase;
        for (PurchaseEvent event : purchase.decide(command)) {
            now = now.evolve(event);
        }
        return now;
    }

    private static PurchaseCommand delivery(Received... lines) {
        return new PurchaseCommand.NoteDelivery(PO, "D-1", List.of(lines), WHO, WHEN);
    }

    @Test
    void an_order_goes_from_ordered_over_partly_received_to_received() {
        Purchase order = placed(REELS, METRES);
        assertThat(order.state()).isEqualTo(PurchaseState.ORDERED);
        order = after(order, delivery(new Received(1, 10, 500_000)));
        assertThat(order.state()).isEqualTo(PurchaseState.PARTLY_RECEIVED);
        order = after(order, delivery(new Received(2, 0, 60_000)));
        assertThat(order.state()).isEqualTo(PurchaseState.PARTLY_RECEIVED);
        order = after(order, delivery(new Received(2, 0, 41_000)));
        assertThat(order.state()).isEqualTo(PurchaseState.RECEIVED);
    }

    @Test
    void reels_are_complete_by_count_and_metres_by_length() {
        assertThat(REELS.remaining(10, 499_000)).isZero();
        assertThat(REELS.remaining(9, 999_999)).isEqualTo(50_292);
        assertThat(METRES.remaining(0, 99_999)).isEqualTo(1);
        assertThat(METRES.remaining(0, 120_000)).isZero();
        assertThat(REELS.committed(9, 0)).isEqualTo(3_501);
        assertThat(METRES.committed(0, 50_000)).isEqualTo(175_050);
        assertThat(METRES.committed(0, 0)).isEqualTo(350_100);
    }

    @Test
    void what_goes_back_is_to_come_again() {
        Purchase order = after(placed(REELS), delivery(new Received(1, 10, 502_920)));
        order = after(
                order, new PurchaseCommand.NoteSentBack(PO, "D-1", List.of(new Received(1, 1, 50_292)), WHO, WHEN));
        assertThat(order.state()).isEqualTo(PurchaseState.PARTLY_RECEIVED);
        order = after(
                order, new PurchaseCommand.NoteSentBack(PO, "D-1", List.of(new Received(1, 9, 452_628)), WHO, WHEN));
        assertThat(order.state()).isEqualTo(PurchaseState.ORDERED);
    }

    @Test
    void a_cancelled_order_that_is_delivered_all_the_same_keeps_the_fact_and_stays_cancelled() {
        Purchase order = after(placed(REELS), new PurchaseCommand.Cancel(PO, "ordered twice", WHO, WHEN));
        order = after(order, delivery(new Received(1, 10, 502_920)));
        assertThat(order.state()).isEqualTo(PurchaseState.CANCELLED);
        assertThat(order.received().get(1)).isEqualTo(new Received(1, 10, 502_920));
    }

    @Test
    void wishes_that_make_no_sense_are_refused_with_what_to_do() {
        Purchase partly = after(placed(REELS), delivery(new Received(1, 1, 50_000)));
        assertRefused(partly, new PurchaseCommand.Cancel(PO, "why", WHO, WHEN), "Close it instead");
        assertRefused(partly, new PurchaseCommand.Close(PO, " ", WHO, WHEN), "Write the reason");
        Purchase closed = after(partly, new PurchaseCommand.Close(PO, "enough", WHO, WHEN));
        assertRefused(closed, new PurchaseCommand.Close(PO, "again", WHO, WHEN), "is closed");
        assertRefused(closed, new PurchaseCommand.Expect(PO, LocalDate.MAX, "late", WHO, WHEN), "is closed");
        assertRefused(Purchase.UNKNOWN, delivery(new Received(1, 1, 1)), "never placed");
        assertRefused(partly, delivery(new Received(7, 1, 1)), "no line [7]");
        assertThatThrownBy(() -> placed()).hasMessageContaining("has no line");
        assertThatThrownBy(() -> placed(line(1, MaterialKind.TAPE, OrderUnit.REEL, "1 m", 0)))
                .hasMessageContaining("[0] units");
        assertThatThrownBy(() -> placed(REELS, REELS)).isInstanceOf(PurchaseRefused.LineWithoutQuantity.class);
    }

    private static void assertRefused(Purchase purchase, PurchaseCommand command, String words) {
        assertThatThrownBy(() -> purchase.decide(command))
                .isInstanceOf(PurchaseRefused.class)
                .hasMessageContaining(words);
    }
}
