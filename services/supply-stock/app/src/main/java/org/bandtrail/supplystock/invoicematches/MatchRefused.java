package org.bandtrail.supplystock.invoicematches;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Money;

/** Why a wish about a match is refused. */
public abstract sealed class MatchRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private MatchRefused(String message) {
        super(message);
    }

    /** Nobody ordered it. */
    public static final class OrderLineUnknown extends MatchRefused {
        private static final long serialVersionUID = 1L;

        OrderLineUnknown(Object purchase, int line) {
            super("Order [%s] has no line [%d]. Choose one of the supplier's order lines.".formatted(purchase, line));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The order went to another supplier. */
    public static final class OrderOfAnother extends MatchRefused {
        private static final long serialVersionUID = 1L;

        OrderOfAnother(Object purchase, Object ordered, Object billed) {
            super("Order [%s] went to supplier [%s], and the invoice is from [%s]. Choose an order of that supplier."
                    .formatted(purchase, ordered, billed));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** There are no reels or batches that could take the difference. */
    public static final class NothingToCarryTo extends MatchRefused {
        private static final long serialVersionUID = 1L;

        NothingToCarryTo(Object purchase, int line, Money difference) {
            super(("The invoice differs by %s from the receipts of line %d of order [%s], and no reel or batch of it is"
                            + " in the books. Accept its delivery first.")
                    .formatted(difference, line, purchase));
        }
    }

    /** A preview needs a file or rows. */
    public static final class NothingToRead extends MatchRefused {
        private static final long serialVersionUID = 1L;

        NothingToRead() {
            super("There is neither a file nor a row. Choose a UBL or CSV file, or enter the lines.");
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The whole of a line came; there is nothing less to pay. */
    public static final class AllOfItCame extends MatchRefused {
        private static final long serialVersionUID = 1L;

        AllOfItCame(String line) {
            super("Line [%s] bills nothing beyond what came. Accept it, or settle it as not paid.".formatted(line));
        }
    }
}
