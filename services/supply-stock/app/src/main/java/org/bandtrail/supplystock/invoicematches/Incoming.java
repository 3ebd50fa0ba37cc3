package org.bandtrail.supplystock.invoicematches;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.supplystock.invoicefiles.InvoiceFile;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice;
import org.bandtrail.supplystock.invoices.InvoiceDocument;
import org.bandtrail.supplystock.invoices.InvoiceRow;
import org.bandtrail.supplystock.invoices.Invoices;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.invoices.LineUse;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Looks at a paper before it is kept: what would be stored, what it most probably bills, what is wrong with it. */
@Component
class Incoming {
    /** Stands in while nobody has said who sent the paper; nothing is kept under it. */
    private static final SupplierId NOBODY = new SupplierId("NOT-CHOSEN");

    private final OrderLines orderLines;
    private final Linking linking;
    private final Matches matches;
    private final Invoices invoices;

    Incoming(OrderLines orderLines, Linking linking, Matches matches, Invoices invoices) {
        this.orderLines = orderLines;
        this.linking = linking;
        this.matches = matches;
        this.invoices = invoices;
    }

    /**
     * What a person chose for a line.
     *
     * @param purchaseId order it bills, or null
     * @param quantity in words of the books, if the unit on the paper does not say; or null
     */
    record LineChoice(
            String line,
            LineUse use,
            @Nullable PurchaseId purchaseId,
            @Nullable Integer purchaseLine,
            boolean priceOnly,
            @Nullable String quantity) {}

    /**
     * A paper as it would be kept.
     *
     * @param supplierId who sent it, null if no supplier answers to its names
     * @param choices what each line most probably bills
     * @param notes units that cannot be converted and the like, by line
     * @param earlier papers of this supplier with the same number
     */
    record Preview(
            SupplierInvoice document,
            String source,
            @Nullable String supplierId,
            @Nullable String invoiceId,
            List<String> findings,
            List<InvoiceRow> earlier,
            List<LineChoice> choices,
            List<MatchedLine> lines,
            Map<String, String> notes,
            List<OrderLineChoice> orderLines) {}

    SupplierInvoice read(byte @Nullable [] content, @Nullable List<Map<String, String>> rows) {
        if (content != null && content.length > 0) {
            return InvoiceFile.read(content);
        }
        if (rows == null || rows.isEmpty()) {
            throw new MatchRefused.NothingToRead();
        }
        return InvoiceFile.entered(rows);
    }

    Preview preview(SupplierInvoice document, String source, @Nullable SupplierId given) {
        Optional<SupplierId> found = given == null ? orderLines.supplier(document.supplierNames()) : Optional.of(given);
        SupplierId supplier = found.orElse(NOBODY);
        List<OrderLineChoice> choices = found.map(orderLines::of).orElse(List.of());
        List<LineChoice> probable = probable(document, choices);
        Map<String, String> notes = new HashMap<>();
        Map<String, Paper.Choice> links = new HashMap<>();
        for (LineChoice choice : probable) {
            try {
                links.put(choice.line(), chosen(document, supplier, choice));
            } catch (IllegalArgumentException unit) {
                notes.put(choice.line(), String.valueOf(unit.getMessage()));
                links.put(choice.line(), new Paper.Choice(choice.use(), null));
            }
        }
        InvoiceDocument paper = Paper.of(document, supplier, source, links);
        return new Preview(
                document,
                source,
                found.map(SupplierId::value).orElse(null),
                found.isEmpty() ? null : paper.id().value(),
                paper.findings(),
                found.map(id -> invoices.numbered(id.value(), paper.number())).orElse(List.of()),
                probable,
                matches.of("", lines(paper)),
                notes,
                choices);
    }

    private static List<LineChoice> probable(SupplierInvoice document, List<OrderLineChoice> choices) {
        return document.lines().stream()
                .map(line -> OrderLines.probable(choices, document, line)
                        .map(found -> new LineChoice(
                                line.id(),
                                LineUse.GOODS,
                                new PurchaseId(found.purchaseId()),
                                found.line(),
                                false,
                                null))
                        .orElseGet(() ->
                                new LineChoice(line.id(), Paper.probableUse(line.item()), null, null, false, null)))
                .toList();
    }

    private static List<Matches.Line> lines(InvoiceDocument paper) {
        return paper.lines().stream()
                .map(line -> new Matches.Line(line.line(), line.use(), line.link(), line.net(), null, false))
                .toList();
    }

    /** What would be kept, with what people chose; without choices with what is most probable. */
    InvoiceDocument paper(
            SupplierInvoice document, SupplierId supplier, String source, @Nullable List<LineChoice> chosen) {
        List<LineChoice> choices = chosen == null ? probable(document, orderLines.of(supplier)) : chosen;
        Map<String, Paper.Choice> links = new HashMap<>();
        choices.forEach(choice -> links.put(choice.line(), chosen(document, supplier, choice)));
        return Paper.of(document, supplier, source, links);
    }

    private Paper.Choice chosen(SupplierInvoice document, SupplierId supplier, LineChoice choice) {
        if (choice.use() != LineUse.GOODS || choice.purchaseId() == null || choice.purchaseLine() == null) {
            return new Paper.Choice(choice.use(), null);
        }
        SupplierInvoice.Line line = document.lines().stream()
                .filter(each -> each.id().equals(choice.line()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The invoice has no line [%s]. Choose one of its lines.".formatted(choice.line())));
        LineLink link = linking.link(
                new Linking.Wish(choice.purchaseId(), choice.purchaseLine(), choice.priceOnly(), choice.quantity()),
                supplier,
                line.quantity(),
                line.unit(),
                document.kind().sign());
        return new Paper.Choice(LineUse.GOODS, link);
    }
}
