package org.bandtrail.supplystock.invoicematches;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.invoicefiles.InvoiceArithmetic;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice;
import org.bandtrail.supplystock.invoices.InvoiceDocument;
import org.bandtrail.supplystock.invoices.InvoiceLine;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.invoices.LineUse;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/**
 * Makes what is kept of what was read. Allowances on the whole document lower the cost of its lines (trade discounts,
 * IAS 2.11): they are split over the lines by amount, by largest remainder, so that no cent is lost. Charges stay apart
 * until somebody spreads them. A credit note's sums become negative.
 */
final class Paper {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final List<String> FREIGHT = List.of("freight", "shipping", "carriage", "delivery", "transport");
    private static final List<String> DUTY = List.of("duty", "customs");

    private Paper() {}

    /** What the person said about a line: the order line it bills, or what else it is. */
    record Choice(LineUse use, @Nullable LineLink link) {}

    static InvoiceDocument of(SupplierInvoice read, SupplierId supplier, String source, Map<String, Choice> choices) {
        int sign = read.kind().sign();
        List<Long> allowances = allowances(read);
        List<InvoiceLine> lines = new ArrayList<>();
        for (int index = 0; index < read.lines().size(); index++) {
            SupplierInvoice.Line line = read.lines().get(index);
            long net = line.amount().minor() - allowances.get(index);
            Choice choice = choices.getOrDefault(line.id(), new Choice(LineUse.GOODS, null));
            lines.add(line(line, sign, net, choice));
        }
        SupplierInvoice.Totals totals = read.totals();
        return new InvoiceDocument(
                supplier,
                read.kind(),
                read.number().strip(),
                read.issuedOn(),
                read.dueOn(),
                read.currency(),
                read.credits(),
                read.order(),
                lines,
                read.adjustments().stream()
                        .filter(SupplierInvoice.Adjustment::charge)
                        .map(each -> new InvoiceDocument.Charge(each.reason(), signed(each.amount(), sign)))
                        .toList(),
                signed(totals.tax(), sign),
                signed(totals.payable(), sign),
                InvoiceArithmetic.check(read).stream()
                        .map(InvoiceArithmetic.Finding::sentence)
                        .toList(),
                source);
    }

    private static InvoiceLine line(SupplierInvoice.Line line, int sign, long net, Choice choice) {
        String currency = line.amount().currency();
        BigDecimal percent = line.taxPercent() == null ? BigDecimal.ZERO : line.taxPercent();
        long tax = BigDecimal.valueOf(net)
                .multiply(percent)
                .divide(HUNDRED, 0, RoundingMode.HALF_UP)
                .longValueExact();
        return new InvoiceLine(
                line.id(),
                line.item(),
                line.sellersItem(),
                line.quantity().toPlainString(),
                line.unit(),
                line.price().toPlainString(),
                line.perQuantity().toPlainString(),
                line.amount(),
                Money.of(sign * net, currency),
                Money.of(sign * tax, currency),
                choice.use(),
                choice.link());
    }

    /** Each line's share of the document's allowances, minor units. */
    private static List<Long> allowances(SupplierInvoice read) {
        long sum = read.adjustments().stream()
                .filter(each -> !each.charge())
                .mapToLong(each -> each.amount().minor())
                .sum();
        List<Long> weights = read.lines().stream()
                .map(line -> Math.max(0, line.amount().minor()))
                .toList();
        boolean nothing = sum == 0 || weights.stream().allMatch(weight -> weight == 0);
        return nothing ? weights.stream().map(unused -> 0L).toList() : LargestRemainder.split(sum, weights);
    }

    private static Money signed(Money amount, int sign) {
        return Money.of(sign * amount.minor(), amount.currency());
    }

    /** What a line without an order probably is, by its words. */
    static LineUse probableUse(String item) {
        String words = item.toLowerCase(Locale.ROOT);
        if (FREIGHT.stream().anyMatch(words::contains)) {
            return LineUse.FREIGHT;
        }
        return DUTY.stream().anyMatch(words::contains) ? LineUse.DUTY : LineUse.GOODS;
    }
}
