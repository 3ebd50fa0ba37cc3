package org.bandtrail.supplystock.invoices;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/** What people ask of an invoice, in the order of its life. */
public sealed interface InvoiceCommand {
    /** The invoice it is about. */
    InvoiceId invoiceId();

    /** Wish: keep an invoice. Refused if the same paper is kept already. Sums that do not come out hold it. */
    record Register(
            @TargetAggregateIdentifier InvoiceId invoiceId, InvoiceDocument document, PersonId by, Occurred occurred)
            implements InvoiceCommand {}

    /** Wish: say which order line a line bills. Refused once the line is approved or not paid. */
    record Link(
            @TargetAggregateIdentifier InvoiceId invoiceId, String line, LineLink link, PersonId by, Occurred occurred)
            implements InvoiceCommand {}

    /** Wish: say what a line is that no order names. Refused once the line is approved or not paid. */
    record Sort(
            @TargetAggregateIdentifier InvoiceId invoiceId, String line, LineUse use, PersonId by, Occurred occurred)
            implements InvoiceCommand {}

    /**
     * Wish: hold a line or the whole invoice back from payment. Refused without a reason.
     *
     * @param line null for the whole invoice
     */
    record Hold(
            @TargetAggregateIdentifier InvoiceId invoiceId,
            @Nullable String line,
            String reason,
            PersonId by,
            Occurred occurred)
            implements InvoiceCommand {}

    /**
     * Wish: end a dispute. Refused without a reason.
     *
     * @param line null for the whole invoice, which can only be accepted
     * @param payQuantity millimetres or pieces that are paid with {@code PAY_RECEIVED}; else null
     * @param payNet what is paid for them before tax; else null
     */
    record Settle(
            @TargetAggregateIdentifier InvoiceId invoiceId,
            @Nullable String line,
            Settlement how,
            @Nullable Long payQuantity,
            @Nullable Money payNet,
            String reason,
            PersonId by,
            Occurred occurred)
            implements InvoiceCommand {}

    /**
     * Wish: approve for payment whatever is neither held nor done. From a sum on a second person has to.
     *
     * @param secondPersonFromMinor minor units of the invoice's currency
     */
    record Approve(
            @TargetAggregateIdentifier InvoiceId invoiceId, long secondPersonFromMinor, PersonId by, Occurred occurred)
            implements InvoiceCommand {}

    /**
     * Wish: note that a part of its charges was spread over goods. Refused beyond what it charges.
     *
     * @param landedCost identity of the landed cost that spreads it
     */
    record SpreadCharge(
            @TargetAggregateIdentifier InvoiceId invoiceId,
            String landedCost,
            Money amount,
            PersonId by,
            Occurred occurred)
            implements InvoiceCommand {}

    /** Wish: take back an invoice registered by mistake. Refused once anything of it is approved. */
    record Withdraw(@TargetAggregateIdentifier InvoiceId invoiceId, String reason, PersonId by, Occurred occurred)
            implements InvoiceCommand {}
}
