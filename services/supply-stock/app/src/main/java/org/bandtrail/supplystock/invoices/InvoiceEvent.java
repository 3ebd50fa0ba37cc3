package org.bandtrail.supplystock.invoices;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/** What happened to an invoice. */
public sealed interface InvoiceEvent {
    /** The invoice it happened to. */
    InvoiceId invoiceId();

    /** Who did it. */
    PersonId by();

    /** When. */
    Occurred occurred();

    /** It came in and is kept as it was written. */
    @StoredAs("invoice.registered")
    @Revision("1")
    record Registered(InvoiceId invoiceId, InvoiceDocument document, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /** A line bills this order line. */
    @StoredAs("invoice.line-linked")
    @Revision("1")
    record LineLinked(InvoiceId invoiceId, String line, LineLink link, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /** A line is something that no order names. */
    @StoredAs("invoice.line-sorted")
    @Revision("1")
    record LineSorted(InvoiceId invoiceId, String line, LineUse use, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /** A line, or the whole if {@code line} is null, is held back from payment. */
    @StoredAs("invoice.held")
    @Revision("1")
    record Held(InvoiceId invoiceId, @Nullable String line, String reason, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /** A dispute about a line, or the whole if {@code line} is null, has ended. */
    @StoredAs("invoice.settled")
    @Revision("1")
    record Settled(
            InvoiceId invoiceId,
            @Nullable String line,
            Settlement how,
            @Nullable Long payQuantity,
            @Nullable Money payNet,
            String reason,
            PersonId by,
            Occurred occurred)
            implements InvoiceEvent {}

    /** One person approved; another one has to as well. */
    @StoredAs("invoice.approved-once")
    @Revision("1")
    record ApprovedOnce(InvoiceId invoiceId, List<ApprovedLine> lines, Money toPay, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /**
     * These lines are approved for payment.
     *
     * @param toPay with tax and charges; negative if the supplier owes it
     * @param firstBy who approved before, or null if one person was enough
     */
    @StoredAs("invoice.approved")
    @Revision("1")
    record Approved(
            InvoiceId invoiceId,
            List<ApprovedLine> lines,
            Money toPay,
            @Nullable PersonId firstBy,
            PersonId by,
            Occurred occurred)
            implements InvoiceEvent {}

    /** A part of its charges was spread over goods. */
    @StoredAs("invoice.charge-spread")
    @Revision("1")
    record ChargeSpread(InvoiceId invoiceId, String landedCost, Money amount, PersonId by, Occurred occurred)
            implements InvoiceEvent {}

    /** It was registered by mistake. */
    @StoredAs("invoice.withdrawn")
    @Revision("1")
    record Withdrawn(InvoiceId invoiceId, String reason, PersonId by, Occurred occurred) implements InvoiceEvent {}

    /**
     * A line that is paid.
     *
     * @param link what it bills, null if it is no ordered goods
     * @param net what is paid for it before tax
     * @param acceptedBecause why a difference is accepted, or null
     */
    record ApprovedLine(
            String line,
            LineUse use,
            @Nullable LineLink link,
            Money net,
            @Nullable String acceptedBecause) {}
}
