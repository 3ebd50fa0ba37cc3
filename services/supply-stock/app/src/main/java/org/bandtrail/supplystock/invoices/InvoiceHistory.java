package org.bandtrail.supplystock.invoices;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.bandtrail.supplystock.invoices.Standing.State;

/** What each event makes of an invoice. */
final class InvoiceHistory {
    private InvoiceHistory() {}

    static Invoice after(Invoice before, InvoiceEvent event) {
        return switch (event) {
            case InvoiceEvent.Registered registered -> registered(before, registered);
            case InvoiceEvent.LineLinked linked ->
                changed(before, linked.line(), each -> each.anew(each.line().linked(linked.link())));
            case InvoiceEvent.LineSorted sorted ->
                changed(before, sorted.line(), each -> each.anew(each.line().used(sorted.use())));
            case InvoiceEvent.Held held ->
                held.line() == null
                        ? before.with(before.lines(), held.reason())
                        : changed(before, held.line(), each -> each.now(State.HELD, held.reason()));
            case InvoiceEvent.Settled settled ->
                settled.line() == null
                        ? before.with(before.lines(), null)
                        : changed(before, settled.line(), each -> settled(each, settled));
            case InvoiceEvent.ApprovedOnce once ->
                new Invoice(
                        before.document(),
                        before.lines(),
                        before.held(),
                        once.by(),
                        before.approvedMinor(),
                        before.spreadMinor());
            case InvoiceEvent.Approved approved -> approved(before, approved);
            case InvoiceEvent.ChargeSpread spread ->
                new Invoice(
                        before.document(),
                        before.lines(),
                        before.held(),
                        before.firstBy(),
                        before.approvedMinor(),
                        before.spreadMinor() + spread.amount().minor());
            case InvoiceEvent.Withdrawn unused -> Invoice.UNKNOWN;
        };
    }

    private static Invoice registered(Invoice before, InvoiceEvent.Registered registered) {
        if (before.document() != null) {
            throw new IllegalStateException(
                    "Invoice %s was registered twice in its own history.".formatted(registered.invoiceId()));
        }
        Map<String, Standing> lines = new LinkedHashMap<>();
        registered.document().lines().forEach(line -> lines.put(line.line(), Standing.open(line)));
        return new Invoice(registered.document(), lines, null, null, 0, 0);
    }

    private static Invoice approved(Invoice before, InvoiceEvent.Approved approved) {
        Map<String, Standing> lines = new LinkedHashMap<>(before.lines());
        for (InvoiceEvent.ApprovedLine line : approved.lines()) {
            lines.computeIfPresent(line.line(), (id, each) -> each.now(State.APPROVED, each.reason()));
        }
        return new Invoice(
                before.document(),
                lines,
                before.held(),
                null,
                before.approvedMinor() + approved.toPay().minor(),
                before.spreadMinor());
    }

    private static Standing settled(Standing line, InvoiceEvent.Settled settled) {
        return switch (settled.how()) {
            case ACCEPTED -> line.paying(null, null, settled.reason());
            case PAY_RECEIVED -> line.paying(settled.payQuantity(), settled.payNet(), settled.reason());
            case NOT_PAID -> line.now(State.NOT_PAID, settled.reason());
        };
    }

    private static Invoice changed(Invoice before, String line, UnaryOperator<Standing> change) {
        Map<String, Standing> lines = new LinkedHashMap<>(before.lines());
        lines.compute(line, (id, each) -> change.apply(Objects.requireNonNull(each, "No line " + id)));
        return before.with(lines, before.held());
    }
}
