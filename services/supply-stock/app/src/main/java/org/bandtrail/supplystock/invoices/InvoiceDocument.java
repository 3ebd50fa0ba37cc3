package org.bandtrail.supplystock.invoices;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/**
 * What a supplier wrote, as it is kept for ever. Sums are negative on a credit note.
 *
 * @param credits number of the invoice that a credit note takes back, or null
 * @param order the order the document names, as written, or null
 * @param charges on the document as a whole, with the supplier's words
 * @param findings sums that did not come out when it was reckoned again, in words
 * @param source name of the file, or that it was entered by hand
 */
public record InvoiceDocument(
        SupplierId supplier,
        InvoiceKind kind,
        String number,
        LocalDate issuedOn,
        @Nullable LocalDate dueOn,
        String currency,
        @Nullable String credits,
        @Nullable String order,
        List<InvoiceLine> lines,
        List<Charge> charges,
        Money tax,
        Money payable,
        List<String> findings,
        String source) {

    /** A charge on the document as a whole, such as freight. */
    public record Charge(String reason, Money amount) {}

    /** The identity of this paper. */
    public InvoiceId id() {
        return InvoiceId.of(supplier, kind, number, payable);
    }
}
