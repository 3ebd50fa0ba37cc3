package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Adjustment;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Line;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Tax;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Totals;

/**
 * Reckons a document again and tells every sum that does not come out. Rules BR-CO-10 to BR-CO-17 of EN 16931-1:2017
 * (from memory): line = quantity x price / base quantity, less its allowances, plus its charges; before tax = lines
 * less allowances plus charges; tax = rate x base for each rate; payable = with tax less prepaid plus rounding. Every
 * amount is rounded half up to the minor unit of its currency, once, at its own end. Nothing is mended: what the
 * supplier wrote stays, with the finding beside it.
 */
public final class InvoiceArithmetic {
    private static final int LIMIT_DIGITS = 15;

    private InvoiceArithmetic() {}

    /**
     * A sum that does not come out.
     *
     * @param line id of the line, or empty for the document as a whole
     * @param what which sum
     */
    public record Finding(String line, String what, Money stated, Money reckoned) {
        /** In words, for people. */
        public String sentence() {
            return "%s says %s; reckoned again it is %s.".formatted(what, stated, reckoned);
        }
    }

    /** Everything that does not come out, in the order of the document; empty for a sound one. */
    public static List<Finding> check(SupplierInvoice invoice) {
        List<Finding> findings = new ArrayList<>();
        for (Line line : invoice.lines()) {
            compare(findings, line.id(), "Line " + line.id(), line.amount(), ofLine(line, invoice.currency()));
        }
        Totals stated = invoice.totals();
        Totals reckoned = totals(
                invoice.currency(),
                invoice.lines(),
                invoice.adjustments(),
                invoice.taxes(),
                stated.prepaid(),
                stated.rounding());
        compare(findings, "", "The sum of the lines", stated.lines(), reckoned.lines());
        compare(findings, "", "The sum of the allowances", stated.allowances(), reckoned.allowances());
        compare(findings, "", "The sum of the charges", stated.charges(), reckoned.charges());
        compare(findings, "", "The sum before tax", stated.beforeTax(), reckoned.beforeTax());
        Map<String, Long> bases = TaxSums.bases(invoice);
        for (Tax tax : invoice.taxes()) {
            checkTax(findings, tax, bases);
        }
        compare(findings, "", "The tax", stated.tax(), reckoned.tax());
        compare(findings, "", "The sum with tax", stated.withTax(), reckoned.withTax());
        compare(findings, "", "The payable sum", stated.payable(), reckoned.payable());
        return List.copyOf(findings);
    }

    /** Quantity times price over base quantity, with the line's own allowances and charges. */
    public static Money ofLine(Line line, String currency) {
        BigDecimal exact = line.quantity().multiply(line.price());
        long own =
                line.adjustments().stream().mapToLong(Adjustment::signedMinor).sum();
        return Money.of(minor(exact, line.perQuantity(), currency) + own, currency);
    }

    /** The line with its amount reckoned from quantity and price. */
    public static Line summed(Line line, String currency) {
        return new Line(
                line.id(),
                line.quantity(),
                line.unit(),
                line.price(),
                line.perQuantity(),
                ofLine(line, currency),
                line.item(),
                line.sellersItem(),
                line.order(),
                line.orderLine(),
                line.adjustments(),
                line.taxCategory(),
                line.taxPercent());
    }

    /** The sums that lines, allowances, charges and taxes come to. */
    public static Totals totals(
            String currency,
            List<Line> lines,
            List<Adjustment> adjustments,
            List<Tax> taxes,
            Money prepaid,
            Money rounding) {
        long sum = lines.stream().mapToLong(line -> line.amount().minor()).sum();
        long charges = sum(adjustments, true);
        long allowances = sum(adjustments, false);
        long tax = taxes.stream().mapToLong(each -> each.amount().minor()).sum();
        long before = sum - allowances + charges;
        return new Totals(
                Money.of(sum, currency),
                Money.of(allowances, currency),
                Money.of(charges, currency),
                Money.of(before, currency),
                Money.of(tax, currency),
                Money.of(before + tax, currency),
                prepaid,
                rounding,
                Money.of(before + tax - prepaid.minor() + rounding.minor(), currency));
    }

    /** A rate that no line states says nothing about its base; the product is checked all the same. */
    private static void checkTax(List<Finding> findings, Tax tax, Map<String, Long> bases) {
        String what = "Tax at %s %%".formatted(tax.percent() == null ? "0" : TaxSums.plain(tax.percent()));
        Long base = bases.get(TaxSums.rate(tax.category(), tax.percent()));
        if (base != null) {
            Money reckoned = Money.of(base, tax.base().currency());
            compare(findings, "", "The base of " + what.toLowerCase(Locale.ROOT), tax.base(), reckoned);
        }
        if (tax.percent() != null) {
            compare(findings, "", what, tax.amount(), TaxSums.ofBase(tax));
        }
    }

    private static long sum(List<Adjustment> adjustments, boolean charges) {
        return adjustments.stream()
                .filter(each -> each.charge() == charges)
                .mapToLong(each -> each.amount().minor())
                .sum();
    }

    private static void compare(List<Finding> findings, String line, String what, Money stated, Money reckoned) {
        if (!stated.equals(reckoned)) {
            findings.add(new Finding(line, what, stated, reckoned));
        }
    }

    /**
     * A price for a base quantity in minor units, rounded half up.
     *
     * @throws IllegalArgumentException naming the base quantity if it is not above 0, or the amount if it is too large
     */
    private static long minor(BigDecimal exact, BigDecimal per, String currency) {
        if (per.signum() <= 0) {
            throw new IllegalArgumentException(
                    "Base quantity [%s] is not above 0. Write for how many units the price is.".formatted(per));
        }
        BigDecimal minor =
                exact.movePointRight(Money.zero(currency).minorDigits()).divide(per, 0, RoundingMode.HALF_UP);
        if (minor.precision() > LIMIT_DIGITS) {
            throw new IllegalArgumentException(
                    "Amount [%s] is beyond %d digits. Check price and quantity.".formatted(exact, LIMIT_DIGITS));
        }
        return minor.longValueExact();
    }
}
