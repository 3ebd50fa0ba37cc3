package org.bandtrail.supplystock.invoices;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoices.InvoiceEvent.ApprovedLine;
import org.bandtrail.supplystock.invoices.Standing.State;
import org.jspecify.annotations.Nullable;

/**
 * The rules of an invoice.
 *
 * @param document what the supplier wrote, null until registered or when withdrawn
 * @param lines every line and where it stands, in the order of the document
 * @param held why the whole invoice is held, or null
 * @param firstBy who approved first and waits for a second person, or null
 * @param approvedMinor approved for payment so far, minor units
 * @param spreadMinor charges spread over goods so far, minor units
 */
public record Invoice(
        @Nullable InvoiceDocument document,
        Map<String, Standing> lines,
        @Nullable String held,
        @Nullable PersonId firstBy,
        long approvedMinor,
        long spreadMinor) {
    /** A paper that has not come in. */
    public static final Invoice UNKNOWN = new Invoice(null, Map.of(), null, null, 0, 0);

    /**
     * What a command makes happen.
     *
     * @throws InvoiceRefused if the wish cannot be granted
     */
    public List<InvoiceEvent> decide(InvoiceCommand command) {
        if (command instanceof InvoiceCommand.Register register) {
            return register(register);
        }
        InvoiceDocument paper = document;
        if (paper == null) {
            throw new InvoiceRefused.InvoiceUnknown(command.invoiceId());
        }
        return switch (command) {
            case InvoiceCommand.Register register -> register(register);
            case InvoiceCommand.Link link -> {
                open(link.invoiceId(), link.line());
                yield List.of(new InvoiceEvent.LineLinked(
                        link.invoiceId(), link.line(), link.link(), link.by(), link.occurred()));
            }
            case InvoiceCommand.Sort sort -> {
                open(sort.invoiceId(), sort.line());
                yield List.of(new InvoiceEvent.LineSorted(
                        sort.invoiceId(), sort.line(), sort.use(), sort.by(), sort.occurred()));
            }
            case InvoiceCommand.Hold hold -> hold(hold);
            case InvoiceCommand.Settle settle -> settle(settle);
            case InvoiceCommand.Approve approve -> approve(approve, paper);
            case InvoiceCommand.SpreadCharge spread -> spread(spread, paper);
            case InvoiceCommand.Withdraw withdraw -> withdraw(withdraw);
        };
    }

    private List<InvoiceEvent> register(InvoiceCommand.Register wish) {
        if (document != null) {
            throw new InvoiceRefused.InvoiceRegisteredBefore(wish.invoiceId(), document.number(), document.source());
        }
        List<InvoiceEvent> events = new ArrayList<>();
        events.add(new InvoiceEvent.Registered(wish.invoiceId(), wish.document(), wish.by(), wish.occurred()));
        if (!wish.document().findings().isEmpty()) {
            String why = String.join(" ", wish.document().findings());
            events.add(new InvoiceEvent.Held(wish.invoiceId(), null, why, wish.by(), wish.occurred()));
        }
        return events;
    }

    private List<InvoiceEvent> hold(InvoiceCommand.Hold wish) {
        reason(wish.invoiceId(), wish.reason());
        if (wish.line() != null) {
            open(wish.invoiceId(), wish.line());
        } else if (lines.values().stream().noneMatch(each -> each.payable() || each.state() == State.HELD)) {
            throw new InvoiceRefused.InvoiceDone(wish.invoiceId());
        }
        return List.of(new InvoiceEvent.Held(
                wish.invoiceId(), wish.line(), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private List<InvoiceEvent> settle(InvoiceCommand.Settle wish) {
        reason(wish.invoiceId(), wish.reason());
        if (wish.line() == null && (held == null || wish.how() != Settlement.ACCEPTED)) {
            throw new InvoiceRefused.NotHeld(wish.invoiceId());
        }
        if (wish.line() != null) {
            Standing line = open(wish.invoiceId(), wish.line());
            if (wish.how() == Settlement.PAY_RECEIVED && !InvoiceChecks.lessThanBilled(line, wish)) {
                throw new InvoiceRefused.NotLessThanBilled(wish.invoiceId(), wish.line());
            }
        }
        return List.of(new InvoiceEvent.Settled(
                wish.invoiceId(),
                wish.line(),
                wish.how(),
                wish.payQuantity(),
                wish.payNet(),
                wish.reason().strip(),
                wish.by(),
                wish.occurred()));
    }

    private List<InvoiceEvent> approve(InvoiceCommand.Approve wish, InvoiceDocument paper) {
        InvoiceId id = wish.invoiceId();
        if (held != null) {
            throw new InvoiceRefused.InvoiceHeld(id, held);
        }
        List<Standing> payable =
                lines.values().stream().filter(Standing::payable).toList();
        if (payable.isEmpty()) {
            throw new InvoiceRefused.InvoiceDone(id);
        }
        InvoiceChecks.everyLineIsKnown(id, payable);
        long unpaid = lines.values().stream().mapToLong(Standing::unpaidMinor).sum();
        Money toPay = Money.of(paper.payable().minor() - unpaid - approvedMinor, paper.currency());
        List<ApprovedLine> approved =
                payable.stream().map(InvoiceChecks::approved).toList();
        if (Math.abs(toPay.minor()) < wish.secondPersonFromMinor()) {
            return List.of(new InvoiceEvent.Approved(id, approved, toPay, null, wish.by(), wish.occurred()));
        }
        if (firstBy == null) {
            return List.of(new InvoiceEvent.ApprovedOnce(id, approved, toPay, wish.by(), wish.occurred()));
        }
        if (firstBy.equals(wish.by())) {
            throw new InvoiceRefused.SecondPersonNeeded(id, toPay, firstBy);
        }
        return List.of(new InvoiceEvent.Approved(id, approved, toPay, firstBy, wish.by(), wish.occurred()));
    }

    private List<InvoiceEvent> spread(InvoiceCommand.SpreadCharge wish, InvoiceDocument paper) {
        long left = InvoiceChecks.spreadable(paper, lines.values()) - spreadMinor;
        if (!wish.amount().currency().equals(paper.currency()) || wish.amount().minor() > left) {
            throw new InvoiceRefused.MoreThanCharged(wish.invoiceId(), wish.amount(), Money.of(left, paper.currency()));
        }
        return List.of(new InvoiceEvent.ChargeSpread(
                wish.invoiceId(), wish.landedCost(), wish.amount(), wish.by(), wish.occurred()));
    }

    private List<InvoiceEvent> withdraw(InvoiceCommand.Withdraw wish) {
        reason(wish.invoiceId(), wish.reason());
        if (spreadMinor != 0 || lines.values().stream().anyMatch(each -> each.state() == State.APPROVED)) {
            throw new InvoiceRefused.InvoiceDone(wish.invoiceId());
        }
        return List.of(
                new InvoiceEvent.Withdrawn(wish.invoiceId(), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private Standing open(InvoiceId id, String line) {
        Standing standing = lines.get(line);
        if (standing == null) {
            throw new InvoiceRefused.LineUnknown(id, line, lines.keySet());
        }
        if (!standing.payable() && standing.state() != State.HELD) {
            throw new InvoiceRefused.LineDone(id, line);
        }
        return standing;
    }

    private static void reason(InvoiceId id, String reason) {
        if (reason.isBlank()) {
            throw new InvoiceRefused.ReasonMissing(id);
        }
    }

    /**
     * The invoice after an event.
     *
     * @throws IllegalStateException if the event cannot have happened to this invoice
     */
    public Invoice evolve(InvoiceEvent event) {
        return InvoiceHistory.after(this, event);
    }

    /** The same invoice with other lines; a first approval was of other figures and is gone. */
    Invoice with(Map<String, Standing> next, @Nullable String hold) {
        return new Invoice(document, new LinkedHashMap<>(next), hold, null, approvedMinor, spreadMinor);
    }
}
