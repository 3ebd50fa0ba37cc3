package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Adjustment;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Line;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Tax;
import org.jspecify.annotations.Nullable;

/**
 * Tax of a document by category and rate: base = lines and charges less allowances of the rate, tax = base x rate,
 * rounded half up to the minor unit once for each rate.
 */
final class TaxSums {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private TaxSums() {}

    /** Tax by rate over lines and adjustments that state one; empty if none does. */
    static List<Tax> taxes(String currency, List<Line> lines, List<Adjustment> adjustments) {
        Map<String, Tax> byRate = new LinkedHashMap<>();
        for (Line line : lines) {
            addBase(byRate, line.taxCategory(), line.taxPercent(), line.amount());
        }
        for (Adjustment each : adjustments) {
            addBase(byRate, each.taxCategory(), each.taxPercent(), Money.of(each.signedMinor(), currency));
        }
        return byRate.values().stream()
                .map(tax -> new Tax(tax.category(), tax.percent(), tax.base(), ofBase(tax)))
                .toList();
    }

    private static void addBase(
            Map<String, Tax> byRate, @Nullable String category, @Nullable BigDecimal percent, Money base) {
        if (percent != null) {
            byRate.merge(
                    rate(category, percent),
                    new Tax(category, percent, base, Money.zero(base.currency())),
                    (one, more) -> new Tax(category, percent, one.base().plus(more.base()), one.amount()));
        }
    }

    /** Base times rate, rounded half up to the minor unit. */
    static Money ofBase(Tax tax) {
        BigDecimal percent = tax.percent() == null ? BigDecimal.ZERO : tax.percent();
        long minor = BigDecimal.valueOf(tax.base().minor())
                .multiply(percent)
                .divide(HUNDRED, 0, RoundingMode.HALF_UP)
                .longValueExact();
        return Money.of(minor, tax.base().currency());
    }

    /** The base of each rate that lines or adjustments state, minor units. */
    static Map<String, Long> bases(SupplierInvoice invoice) {
        Map<String, Long> bases = new LinkedHashMap<>();
        for (Tax tax : taxes(invoice.currency(), invoice.lines(), invoice.adjustments())) {
            bases.put(rate(tax.category(), tax.percent()), tax.base().minor());
        }
        return bases;
    }

    /** A rate by its category and percentage, as a key. */
    static String rate(@Nullable String category, @Nullable BigDecimal percent) {
        return (category == null ? "" : category) + " " + (percent == null ? "" : plain(percent));
    }

    /** A percentage without zeros at its end. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
