package org.bandtrail.supplystock.billings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/**
 * Random orders in random currencies come in parts, are billed in parts at any price, credited by goods and by price,
 * and sent back. After each step: what the receipts cost plus what was carried is what was billed, as far as what came
 * is billed; and the shares of every difference add up to it.
 */
class BillingLawTest {
    private static final Tolerances ANY = new Tolerances(0, 0, 0, 0, 0, 0);

    /** What may happen to an order line. */
    private enum Step {
        RECEIVE,
        BILL,
        CREDIT_GOODS,
        CREDIT_PRICE,
        SEND_BACK
    }

    private record Wish(Step step, long quantity, long minor) {}

    /** An order line with what came, what was billed and what was carried to each reel. */
    private record Ledger(Billing billing, List<Long> received, List<Long> costs, long carried, long paid) {
        long quantity() {
            return received.stream().mapToLong(Long::longValue).sum();
        }

        long cost() {
            return costs.stream().mapToLong(Long::longValue).sum();
        }

        BilledSoFar billed() {
            return billing.lines().getOrDefault(1, BilledSoFar.NOTHING);
        }
    }

    @Test
    void no_cent_is_lost_between_receipts_invoices_and_credit_notes() {
        long commands = Histories.check(
                400,
                20_260_520,
                40,
                () -> new Ledger(Billing.NOTHING, List.of(), List.of(), 0, 0),
                BillingLawTest::any,
                BillingLawTest::after,
                BillingLawTest::lawHolds);

        assertThat(commands).isGreaterThan(5_000);
    }

    private static Wish any(RandomGenerator random, Ledger ledger) {
        Step step = Step.values()[random.nextInt(Step.values().length)];
        return new Wish(step, random.nextLong(1, 100_000), random.nextLong(1, 1_000_000));
    }

    private static Ledger after(Ledger ledger, Wish wish) {
        long unbilled = ledger.quantity() - ledger.billed().quantity();
        return switch (wish.step()) {
            case RECEIVE -> with(ledger, add(ledger.received(), wish.quantity()), add(ledger.costs(), wish.minor()));
            case BILL -> unbilled <= 0 ? ledger : billed(ledger, 1 + wish.quantity() % unbilled, wish.minor());
            case CREDIT_GOODS ->
                ledger.billed().quantity() <= 0 || ledger.billed().netMinor() <= 0
                        ? ledger
                        : billed(
                                ledger,
                                -1 - wish.quantity() % ledger.billed().quantity(),
                                -1 - wish.minor() % ledger.billed().netMinor());
            case CREDIT_PRICE ->
                ledger.billed().netMinor() <= 0
                        ? ledger
                        : billed(ledger, 0, -1 - wish.minor() % ledger.billed().netMinor());
            case SEND_BACK ->
                ledger.received().size() < 2
                        ? ledger
                        : with(
                                ledger,
                                ledger.received().subList(1, ledger.received().size()),
                                ledger.costs().subList(1, ledger.costs().size()));
        };
    }

    private static Ledger with(Ledger ledger, List<Long> received, List<Long> costs) {
        return new Ledger(ledger.billing(), received, costs, ledger.carried(), ledger.paid());
    }

    private static List<Long> add(List<Long> list, long value) {
        List<Long> more = new ArrayList<>(list);
        more.add(value);
        return more;
    }

    private static Ledger billed(Ledger ledger, long quantity, long minor) {
        OrderLineFigures order = new OrderLineFigures(
                new SupplierId("S-1"),
                new PurchaseId("PO-1"),
                1,
                "TAPE",
                Measure.MILLIMETRES,
                null,
                "KWD",
                1_000_000,
                7_000_000,
                ledger.quantity(),
                ledger.cost(),
                0);
        ToBill bill = new ToBill("1", 1, quantity, Money.of(minor, "KWD"), "accepted in this test");
        var event = (BillingEvent.Billed) ledger.billing()
                .decide(new BillingCommand.Bill(
                        new PurchaseId("PO-1"),
                        "INV-1",
                        List.of(order),
                        List.of(bill),
                        ANY,
                        new PersonId("P-1"),
                        Occurred.at(Instant.EPOCH)))
                .getFirst();
        long difference = event.lines().getFirst().difference().minor();
        if (!ledger.received().isEmpty()) {
            assertThat(LargestRemainder.split(difference, ledger.received()).stream()
                            .flatMapToLong(LongStream::of)
                            .sum())
                    .isEqualTo(difference);
        }
        return new Ledger(
                ledger.billing().evolve(event),
                ledger.received(),
                ledger.costs(),
                ledger.carried() + difference,
                ledger.paid() + minor);
    }

    private static void lawHolds(Ledger ledger) {
        BilledSoFar billed = ledger.billed();
        assertThat(billed.netMinor()).isEqualTo(ledger.paid());
        assertThat(billed.atReceiptMinor() + ledger.carried())
                .as("receipts' cost of what is billed, and what was carried, are what was paid")
                .isEqualTo(ledger.paid());
        // The next billing of nothing more would bring the books to the receipts as they are now.
        if (ledger.quantity() > 0 && billed.quantity() == ledger.quantity() && billed.netMinor() > 0) {
            Ledger settled = billed(ledger, 0, -1);
            assertThat(settled.billed().atReceiptMinor()).isEqualTo(ledger.cost());
            assertThat(ledger.cost() + settled.carried())
                    .as("all billed: the goods cost in the books what was paid for them")
                    .isEqualTo(settled.paid());
        }
    }
}
