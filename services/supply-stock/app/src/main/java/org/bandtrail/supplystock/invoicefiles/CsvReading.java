package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.CsvSheet.Row;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Adjustment;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Line;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Tax;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Totals;
import org.jspecify.annotations.Nullable;

/**
 * Reads one invoice from CSV: a row for each line, what belongs to the whole document in every row or in the first.
 * Column {@code what} says goods, charge or allowance; rows of the last two need only item (the reason) and amount.
 */
final class CsvReading {
    private static final Set<String> NEEDED =
            Set.of("number", "issued_on", "currency", "line", "item", "quantity", "unit", "price");
    private static final Set<String> DOCUMENT =
            Set.of("number", "kind", "issued_on", "due_on", "currency", "supplier", "order", "credits", "payable");
    private static final Set<String> LINE = Set.of(
            "what",
            "line",
            "item",
            "sellers_item",
            "order_line",
            "quantity",
            "unit",
            "price",
            "per",
            "amount",
            "tax_percent");
    private final Cells cells = new Cells();
    private final List<Line> lines = new ArrayList<>();
    private final List<Adjustment> adjustments = new ArrayList<>();
    private final Row first;
    private final List<Row> rows;
    private final String currency;

    private CsvReading(List<Row> rows) {
        if (rows.isEmpty()) {
            throw new UnreadableInvoice("", "The file has no rows below its header.");
        }
        this.rows = rows;
        this.first = rows.getFirst();
        this.currency = cells.currency(first.number(), "currency", first.text("currency"));
    }

    /**
     * Reads a file.
     *
     * @throws UnreadableInvoice naming row and column of everything that cannot be read
     */
    static SupplierInvoice read(byte[] bytes) {
        Set<String> known = new TreeSet<>(DOCUMENT);
        known.addAll(LINE);
        return new CsvReading(new CsvSheet(bytes, known, NEEDED).rows()).document();
    }

    /** Reads rows with the columns of a file, see {@link #read(byte[])}. */
    static SupplierInvoice read(List<Row> rows) {
        return new CsvReading(rows).document();
    }

    private SupplierInvoice document() {
        rows.forEach(this::sameDocument);
        rows.forEach(this::row);
        String number = cells.needed(first.number(), "number", first.text("number"));
        var issued = cells.day(first.number(), "issued_on", first.text("issued_on"));
        String due = first.text("due_on");
        var dueOn = due == null ? null : cells.day(first.number(), "due_on", due);
        InvoiceKind kind = kind();
        if (lines.isEmpty()) {
            cells.problem(first.number(), "what", "No row is a line of goods.");
        }
        List<Tax> taxes = TaxSums.taxes(currency, lines, adjustments);
        Totals totals = totals(taxes);
        cells.refuseIfAny();
        String supplier = first.text("supplier");
        return new SupplierInvoice(
                kind,
                number,
                issued,
                dueOn,
                currency,
                supplier == null ? List.of() : List.of(supplier),
                first.text("order"),
                first.text("credits"),
                lines,
                adjustments,
                taxes,
                totals);
    }

    /** Two numbers in one file would be two invoices, of which one would be lost. */
    private void sameDocument(Row row) {
        for (String column : DOCUMENT) {
            String here = row.text(column);
            if (here != null && !here.equals(first.text(column)) && !column.equals("order")) {
                cells.problem(
                        row.number(),
                        column,
                        "[%s] is not the [%s] of the first row. One file is one invoice."
                                .formatted(here, first.text(column)));
            }
        }
    }

    private InvoiceKind kind() {
        String text = first.text("kind");
        String word = text == null ? "invoice" : text.toLowerCase(Locale.ROOT).replace('_', ' ');
        if (!word.equals("invoice") && !word.equals("credit note")) {
            cells.problem(first.number(), "kind", "[%s] is neither invoice nor credit note.".formatted(word));
        }
        return word.equals("credit note") ? InvoiceKind.CREDIT_NOTE : InvoiceKind.INVOICE;
    }

    private void row(Row row) {
        String text = row.text("what");
        String what = text == null ? "goods" : text.toLowerCase(Locale.ROOT);
        switch (what) {
            case "goods" -> lines.add(line(row));
            case "charge", "allowance" ->
                adjustments.add(new Adjustment(
                        what.equals("charge"),
                        cells.needed(row.number(), "item", row.text("item")),
                        cells.money(row.number(), "amount", row.text("amount"), currency),
                        null,
                        percent(row)));
            default -> cells.problem(row.number(), "what", "[%s] is not goods, charge or allowance.".formatted(what));
        }
    }

    private Line line(Row row) {
        int number = row.number();
        String per = row.text("per");
        BigDecimal base = per == null ? BigDecimal.ONE : cells.number(number, "per", per);
        if (base.signum() <= 0) {
            cells.problem(number, "per", "[%s] is not above 0.".formatted(per));
            base = BigDecimal.ONE;
        }
        String amount = row.text("amount");
        Line unsummed = new Line(
                cells.needed(number, "line", row.text("line")),
                cells.number(number, "quantity", row.text("quantity")),
                cells.needed(number, "unit", row.text("unit")),
                cells.number(number, "price", row.text("price")),
                base,
                amount == null ? Money.zero(currency) : cells.money(number, "amount", amount, currency),
                cells.needed(number, "item", row.text("item")),
                row.text("sellers_item"),
                row.text("order"),
                row.text("order_line"),
                List.of(),
                null,
                percent(row));
        return amount == null ? InvoiceArithmetic.summed(unsummed, currency) : unsummed;
    }

    private @Nullable BigDecimal percent(Row row) {
        String text = row.text("tax_percent");
        return text == null ? null : cells.number(row.number(), "tax_percent", text);
    }

    /** Reckoned, but for the payable sum if the file states one: then it is checked like any other. */
    private Totals totals(List<Tax> taxes) {
        Money nothing = Money.zero(currency);
        Totals sums = InvoiceArithmetic.totals(currency, lines, adjustments, taxes, nothing, nothing);
        String payable = first.text("payable");
        return payable == null
                ? sums
                : new Totals(
                        sums.lines(),
                        sums.allowances(),
                        sums.charges(),
                        sums.beforeTax(),
                        sums.tax(),
                        sums.withTax(),
                        nothing,
                        nothing,
                        cells.money(first.number(), "payable", payable, currency));
    }
}
