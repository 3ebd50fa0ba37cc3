package org.bandtrail.supplystock.invoices;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/** Two lines of USD 388.00 and 18.00 with 6 % tax (23.28 and 1.08), freight 25.00: payable 455.36. By hand. */
final class InvoiceSamples {
    static final Occurred NOW = Occurred.at(Instant.parse("2026-05-20T10:00:00Z"));
    static final PersonId ANN = new PersonId("P-ANN");
    static final PersonId BEN = new PersonId("P-BEN");
    static final LineLink TAPE = new LineLink(new PurchaseId("PO-7"), 1, 365_760);
    static final LineLink PINS = new LineLink(new PurchaseId("PO-7"), 2, 1_440);
    static final long NO_SECOND = 1_000_000_00;

    private InvoiceSamples() {}

    static Invoice registered(InvoiceDocument document) {
        return after(Invoice.UNKNOWN, register(document));
    }

    static Invoice after(Invoice invoice, InvoiceCommand command) {
        Invoice next = invoice;
        for (InvoiceEvent event : invoice.decide(command)) {
            next = next.evolve(event);
        }
        return next;
    }

    static InvoiceCommand register(InvoiceDocument document) {
        return new InvoiceCommand.Register(id(), document, ANN, NOW);
    }

    static InvoiceCommand approve(PersonId by, long secondPersonFromMinor) {
        return new InvoiceCommand.Approve(id(), secondPersonFromMinor, by, NOW);
    }

    static InvoiceCommand hold(String line, String reason) {
        return new InvoiceCommand.Hold(id(), line, reason, ANN, NOW);
    }

    static InvoiceCommand settle(@Nullable String line, Settlement how, @Nullable Long quantity, @Nullable Money net) {
        return new InvoiceCommand.Settle(id(), line, how, quantity, net, "as agreed", ANN, NOW);
    }

    static InvoiceCommand spread(long minor) {
        return new InvoiceCommand.SpreadCharge(id(), "LC-1", usd(minor), ANN, NOW);
    }

    static InvoiceDocument document(List<String> findings) {
        return new InvoiceDocument(
                new SupplierId("REED"),
                InvoiceKind.INVOICE,
                "A-17",
                LocalDate.parse("2026-05-19"),
                null,
                "USD",
                null,
                "PO-7",
                List.of(
                        line("1", "8", "XRL", "48.50", 388_00, 23_28, TAPE),
                        line("2", "1440", "C62", "0.0125", 18_00, 1_08, PINS)),
                List.of(new InvoiceDocument.Charge("Freight", usd(25_00))),
                usd(24_36),
                usd(455_36),
                findings,
                "a-17.xml");
    }

    static InvoiceLine line(
            String line, String quantity, String unit, String price, long net, long tax, LineLink link) {
        return new InvoiceLine(
                line,
                "item " + line,
                null,
                quantity,
                unit,
                price,
                "1",
                usd(net),
                usd(net),
                usd(tax),
                LineUse.GOODS,
                link);
    }

    static InvoiceId of(String number, Money payable) {
        return InvoiceId.of(new SupplierId("REED"), InvoiceKind.INVOICE, number, payable);
    }

    static InvoiceId id() {
        return of("A-17", usd(455_36));
    }

    static Money usd(long minor) {
        return Money.of(minor, "USD");
    }
}
