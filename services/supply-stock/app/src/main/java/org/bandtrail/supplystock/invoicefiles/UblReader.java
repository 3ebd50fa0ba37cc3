package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Adjustment;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Line;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Tax;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice.Totals;
import org.jspecify.annotations.Nullable;

/**
 * Reads an Invoice or CreditNote of UBL 2.1 (OASIS Universal Business Language 2.1, ISO/IEC 19845:2015). Only elements
 * that matter for the match are read; others are passed over. Elements are found by their names below a root in the
 * UBL namespace.
 */
final class UblReader {
    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private final XmlTree root;
    private final boolean credit;
    private final Cells cells = new Cells();
    private final String currency;

    private UblReader(XmlTree root) {
        this.root = root;
        this.credit =
                root.namespace().equals(UBL + "CreditNote-2") && root.name().equals("CreditNote");
        if (!credit
                && !(root.namespace().equals(UBL + "Invoice-2") && root.name().equals("Invoice"))) {
            throw new UnreadableInvoice(
                    root.name(),
                    "This XML is neither a UBL Invoice nor a UBL CreditNote."
                            + " Ask the supplier for UBL 2.1, or use CSV.");
        }
        this.currency = cells.currency(0, "DocumentCurrencyCode", root.textAt("DocumentCurrencyCode"));
    }

    /**
     * Reads a document.
     *
     * @throws UnreadableInvoice naming every element that is missing or cannot be read
     */
    static SupplierInvoice read(byte[] bytes) {
        return new UblReader(XmlTree.read(bytes)).document();
    }

    private SupplierInvoice document() {
        String number = cells.needed(0, "ID", root.textAt("ID"));
        var issued = cells.day(0, "IssueDate", root.textAt("IssueDate"));
        String due = root.textAt("DueDate");
        String lineName = credit ? "CreditNoteLine" : "InvoiceLine";
        List<Line> lines = root.all(lineName).map(this::line).toList();
        if (lines.isEmpty()) {
            cells.problem(0, lineName, "There is no line.");
        }
        List<Adjustment> adjustments = adjustments(root);
        List<Tax> taxes = root.at("TaxTotal").stream()
                .flatMap(total -> total.all("TaxSubtotal"))
                .map(this::tax)
                .toList();
        Totals totals = totals();
        cells.refuseIfAny();
        return new SupplierInvoice(
                credit ? InvoiceKind.CREDIT_NOTE : InvoiceKind.INVOICE,
                number,
                issued,
                due == null ? null : cells.day(0, "DueDate", due),
                currency,
                supplierNames(),
                root.textAt("OrderReference", "ID"),
                root.textAt("BillingReference", "InvoiceDocumentReference", "ID"),
                lines,
                adjustments,
                taxes,
                totals);
    }

    private List<String> supplierNames() {
        Optional<XmlTree> party = root.at("AccountingSupplierParty", "Party");
        return party.stream()
                .flatMap(found -> Stream.of(
                        found.textAt("PartyName", "Name"),
                        found.textAt("PartyLegalEntity", "RegistrationName"),
                        found.textAt("PartyIdentification", "ID"),
                        found.textAt("PartyTaxScheme", "CompanyID"),
                        found.textAt("PartyLegalEntity", "CompanyID")))
                .flatMap(name -> Optional.ofNullable(name).stream())
                .distinct()
                .toList();
    }

    private Line line(XmlTree line) {
        String id = cells.needed(0, line.name() + "/ID", line.textAt("ID"));
        String path = "line " + id + "/";
        String counted = credit ? "CreditedQuantity" : "InvoicedQuantity";
        Optional<XmlTree> quantity = line.at(counted);
        String per = line.textAt("Price", "BaseQuantity");
        return new Line(
                id,
                cells.number(0, path + counted, line.textAt(counted)),
                cells.needed(
                        0,
                        path + "unitCode",
                        quantity.map(each -> each.attribute("unitCode")).orElse(null)),
                cells.number(0, path + "PriceAmount", line.textAt("Price", "PriceAmount")),
                per == null ? BigDecimal.ONE : positive(path + "BaseQuantity", per),
                money(line, path, "LineExtensionAmount"),
                cells.needed(0, path + "Item/Name", line.textAt("Item", "Name")),
                line.textAt("Item", "SellersItemIdentification", "ID"),
                line.textAt("OrderLineReference", "OrderReference", "ID"),
                line.textAt("OrderLineReference", "LineID"),
                adjustments(line),
                line.textAt("Item", "ClassifiedTaxCategory", "ID"),
                percent(path, line.textAt("Item", "ClassifiedTaxCategory", "Percent")));
    }

    private BigDecimal positive(String path, String text) {
        BigDecimal number = cells.number(0, path, text);
        if (number.signum() > 0) {
            return number;
        }
        cells.problem(0, path, "[%s] is not above 0.".formatted(text));
        return BigDecimal.ONE;
    }

    private List<Adjustment> adjustments(XmlTree owner) {
        List<Adjustment> adjustments = new ArrayList<>();
        owner.all("AllowanceCharge").forEach(each -> {
            String indicator = cells.needed(0, "AllowanceCharge/ChargeIndicator", each.textAt("ChargeIndicator"));
            adjustments.add(new Adjustment(
                    indicator.equals("true") || indicator.equals("1"),
                    Optional.ofNullable(each.textAt("AllowanceChargeReason")).orElse("no reason given"),
                    money(each, "AllowanceCharge/", "Amount"),
                    each.textAt("TaxCategory", "ID"),
                    percent("AllowanceCharge/", each.textAt("TaxCategory", "Percent"))));
        });
        return adjustments;
    }

    private Tax tax(XmlTree subtotal) {
        return new Tax(
                subtotal.textAt("TaxCategory", "ID"),
                percent("TaxSubtotal/", subtotal.textAt("TaxCategory", "Percent")),
                money(subtotal, "TaxSubtotal/", "TaxableAmount"),
                money(subtotal, "TaxSubtotal/", "TaxAmount"));
    }

    private Totals totals() {
        Optional<XmlTree> found = root.at("LegalMonetaryTotal");
        if (found.isEmpty()) {
            cells.problem(0, "LegalMonetaryTotal", "The sums of the document are missing.");
        }
        return new Totals(
                total(found, "LineExtensionAmount"),
                total(found, "AllowanceTotalAmount"),
                total(found, "ChargeTotalAmount"),
                total(found, "TaxExclusiveAmount"),
                root.at("TaxTotal")
                        .map(tax -> money(tax, "TaxTotal/", "TaxAmount"))
                        .orElse(Money.zero(currency)),
                total(found, "TaxInclusiveAmount"),
                total(found, "PrepaidAmount"),
                total(found, "PayableRoundingAmount"),
                found.map(totals -> money(totals, "LegalMonetaryTotal/", "PayableAmount"))
                        .orElse(Money.zero(currency)));
    }

    /** A sum that may be left out when it is nothing. */
    private Money total(Optional<XmlTree> totals, String name) {
        return totals.flatMap(found -> found.at(name))
                .map(element -> amount(element, "LegalMonetaryTotal/" + name))
                .orElse(Money.zero(currency));
    }

    private Money money(XmlTree owner, String path, String name) {
        Optional<XmlTree> element = owner.at(name);
        if (element.isEmpty()) {
            cells.problem(0, path + name, "The amount is missing.");
            return Money.zero(currency);
        }
        return amount(element.get(), path + name);
    }

    private Money amount(XmlTree element, String path) {
        String own = element.attribute("currencyID");
        if (!own.isEmpty() && !own.equals(currency)) {
            cells.problem(0, path, "[%s] is not the document's currency %s.".formatted(own, currency));
        }
        return cells.money(0, path, element.text(), currency);
    }

    private @Nullable BigDecimal percent(String path, @Nullable String text) {
        return text == null ? null : cells.number(0, path + "Percent", text);
    }
}
