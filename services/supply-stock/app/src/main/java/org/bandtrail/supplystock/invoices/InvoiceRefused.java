package org.bandtrail.supplystock.invoices;

import java.util.Collection;
import java.util.List;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;

/** Why a wish about an invoice is refused. Each message names the invoice, the value, and what to do. */
public abstract sealed class InvoiceRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private InvoiceRefused(String message) {
        super(message);
    }

    /** Nobody has registered it. */
    public static final class InvoiceUnknown extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        InvoiceUnknown(InvoiceId invoice) {
            super("Invoice [%s] is not kept here. Bring it in first.".formatted(invoice));
        }

        @Override
        public int status() {
            return 404;
        }
    }

    /** The same paper came before. */
    public static final class InvoiceRegisteredBefore extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        InvoiceRegisteredBefore(InvoiceId invoice, String number, String source) {
            super(("Invoice [%s] of this supplier with this amount came before, from %s, and is kept as %s."
                            + " Open that one; if this is another paper, check number and amount.")
                    .formatted(number, source, invoice));
        }
    }

    /** A decision without a reason helps nobody later. */
    public static final class ReasonMissing extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(InvoiceId invoice) {
            super("Invoice [%s]: the reason is empty. Write why.".formatted(invoice));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** There is no such line. */
    public static final class LineUnknown extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        LineUnknown(InvoiceId invoice, String line, Collection<String> lines) {
            super("Invoice [%s] has no line [%s]. Its lines are %s.".formatted(invoice, line, lines));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The line is approved or was settled as not paid. */
    public static final class LineDone extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        LineDone(InvoiceId invoice, String line) {
            super(("Line [%s] of invoice [%s] is approved or settled as not paid."
                            + " Ask the supplier for a credit note instead.")
                    .formatted(line, invoice));
        }
    }

    /** Nothing of it waits any more. */
    public static final class InvoiceDone extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        InvoiceDone(InvoiceId invoice) {
            super("Invoice [%s] has no line left that waits, or it is approved in part. Nothing was changed."
                    .formatted(invoice));
        }
    }

    /** The whole invoice is held. */
    public static final class InvoiceHeld extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        InvoiceHeld(InvoiceId invoice, String reason) {
            super("Invoice [%s] is held: %s Settle that first.".formatted(invoice, reason));
        }
    }

    /** There is no dispute to end. */
    public static final class NotHeld extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        NotHeld(InvoiceId invoice) {
            super("Invoice [%s] is not held as a whole, or a whole can only be accepted. Settle its lines instead."
                    .formatted(invoice));
        }
    }

    /** Paying what came only makes sense if that is less than billed. */
    public static final class NotLessThanBilled extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        NotLessThanBilled(InvoiceId invoice, String line) {
            super(("Line [%s] of invoice [%s] bills nothing beyond what came, or names no order line."
                            + " Accept it, or settle it as not paid.")
                    .formatted(line, invoice));
        }
    }

    /** Lines of goods name no order line. */
    public static final class LineNotOrdered extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        LineNotOrdered(InvoiceId invoice, List<String> lines) {
            super(("Invoice [%s]: lines %s name nothing that was ordered."
                            + " Choose their order lines, say what else they are, or hold them.")
                    .formatted(invoice, lines));
        }
    }

    /** From this sum on two persons approve. */
    public static final class SecondPersonNeeded extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        SecondPersonNeeded(InvoiceId invoice, Money toPay, PersonId first) {
            super("Invoice [%s] over %s was approved by %s already. Another person has to approve it as well."
                    .formatted(invoice, toPay, first));
        }
    }

    /** More is spread than the supplier charges. */
    public static final class MoreThanCharged extends InvoiceRefused {
        private static final long serialVersionUID = 1L;

        MoreThanCharged(InvoiceId invoice, Money amount, Money left) {
            super("Invoice [%s] has charges of %s left to spread, not %s. Spread what is left, or enter it by hand."
                    .formatted(invoice, left, amount));
        }
    }
}
