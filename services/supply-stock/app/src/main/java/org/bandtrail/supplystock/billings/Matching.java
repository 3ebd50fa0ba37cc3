package org.bandtrail.supplystock.billings;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costs.PieceCost;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.jspecify.annotations.Nullable;

/**
 * Compares one line of an invoice with its order line and what came of it. Billed so far plus billed now must not be
 * more than received, and the amount must be the order's price times the quantity, each within the tolerances (common
 * practice; the two limits and "the smaller holds" are our own).
 */
public final class Matching {
    private Matching() {}

    /**
     * The outcome for one line.
     *
     * @param expected by the order's price, null if there is no order in this currency
     * @param sentence what is wrong and what to do, or that nothing is
     */
    public record LineMatch(Verdict verdict, @Nullable Money expected, String sentence) {}

    /**
     * Matches a line.
     *
     * @param order the line of the purchase, or null if none is known
     * @param before what was billed against it up to now
     */
    public static LineMatch of(
            @Nullable OrderLineFigures order, BilledSoFar before, ToBill bill, Tolerances tolerances) {
        String line = "Line " + bill.invoiceLine();
        if (order == null) {
            return new LineMatch(
                    Verdict.NOT_ORDERED,
                    null,
                    line + " names nothing that was ordered. Choose its order line, or say what it is.");
        }
        if (!order.currency().equals(bill.net().currency())) {
            return new LineMatch(
                    Verdict.OTHER_CURRENCY,
                    null,
                    "%s is in %s and the order in %s. Ask the supplier for an invoice in %s."
                            .formatted(line, bill.net().currency(), order.currency(), order.currency()));
        }
        Money expected = Money.of(expectedMinor(order, bill.quantity()), order.currency());
        Verdict quantity = quantity(order, before, bill, tolerances);
        if (quantity != Verdict.MATCHES) {
            return new LineMatch(quantity, expected, line + " " + why(quantity, order, before, bill));
        }
        long difference = bill.net().minor() - expected.minor();
        boolean priceOnly = bill.quantity() == 0 && difference <= 0;
        if (!priceOnly && Math.abs(difference) > tolerances.allowedMinor(expected.minor())) {
            return new LineMatch(
                    Verdict.PRICE_DIFFERS,
                    expected,
                    "%s costs %s; by the order it would be %s, %s %s. Accept it with a reason, or hold it."
                            .formatted(
                                    line,
                                    bill.net(),
                                    expected,
                                    Money.of(Math.abs(difference), order.currency()),
                                    difference > 0 ? "less" : "more"));
        }
        return new LineMatch(Verdict.MATCHES, expected, line + " matches order and delivery.");
    }

    private static Verdict quantity(OrderLineFigures order, BilledSoFar before, ToBill bill, Tolerances tolerances) {
        long after = before.quantity() + bill.quantity();
        if (bill.quantity() <= 0) {
            boolean tooMuch = after < 0 || before.netMinor() + bill.net().minor() < 0;
            return tooMuch ? Verdict.MORE_THAN_BILLED : Verdict.MATCHES;
        }
        if (order.received() <= 0) {
            return Verdict.NOTHING_RECEIVED;
        }
        if (after > order.received() + allowed(order, order.received(), tolerances)) {
            return Verdict.MORE_THAN_RECEIVED;
        }
        boolean beyond = after > order.ordered() + allowed(order, order.ordered(), tolerances);
        return beyond && bill.acceptedBecause() == null ? Verdict.MORE_THAN_ORDERED : Verdict.MATCHES;
    }

    private static long allowed(OrderLineFigures order, long of, Tolerances tolerances) {
        return order.measure() == Measure.PIECES ? tolerances.allowedPieces(of) : tolerances.allowedMm(of);
    }

    private static String why(Verdict verdict, OrderLineFigures order, BilledSoFar before, ToBill bill) {
        String billed = before.quantity() == 0
                ? "bills %s".formatted(order.words(bill.quantity()))
                : "bills %s after %s before".formatted(order.words(bill.quantity()), order.words(before.quantity()));
        return switch (verdict) {
            case NOTHING_RECEIVED ->
                order.waiting() > 0
                        ? "%s; %s came and nobody has accepted it yet. Accept the delivery first."
                                .formatted(billed, order.words(order.waiting()))
                        : "%s and nothing has come. Wait for the delivery, or hold the line.".formatted(billed);
            case MORE_THAN_RECEIVED ->
                "%s; %s was received. Wait for the rest, pay what came, or hold the line."
                        .formatted(billed, order.words(order.received()));
            case MORE_THAN_ORDERED ->
                "%s; %s was ordered. It came all the same: accept it with a reason, or send it back."
                        .formatted(billed, order.words(order.ordered()));
            default ->
                "takes back %s, %s; billed so far is %s, %s. Check the credit note."
                        .formatted(
                                order.words(Math.abs(bill.quantity())),
                                bill.net(),
                                order.words(before.quantity()),
                                Money.of(before.netMinor(), order.currency()));
        };
    }

    /** The order's price times a quantity, rounded half up (away from zero). */
    public static long expectedMinor(OrderLineFigures order, long quantity) {
        if (order.ordered() <= 0) {
            return 0;
        }
        BigInteger exact = BigInteger.valueOf(order.orderedMinor()).multiply(BigInteger.valueOf(quantity));
        return new BigDecimal(exact)
                .divide(BigDecimal.valueOf(order.ordered()), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /**
     * Which part of the receipts' cost a billing stands for: the cost of all that is billed with it, less what earlier
     * billings stood for. Summed over all billings of a line it is the receipts' cost, whatever the order and sizes.
     */
    static long atReceiptMinor(OrderLineFigures order, BilledSoFar before, long quantity) {
        long costOfAllBilled = order.received() <= 0
                ? 0
                : new PieceCost(order.receivedMinor(), order.received()).ofFirst(before.quantity() + quantity);
        return costOfAllBilled - before.atReceiptMinor();
    }
}
