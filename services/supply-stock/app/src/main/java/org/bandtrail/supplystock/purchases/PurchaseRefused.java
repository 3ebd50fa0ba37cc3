package org.bandtrail.supplystock.purchases;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Money;

/** Why a wish about an order is refused. */
public abstract sealed class PurchaseRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private PurchaseRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** The number is taken. */
    public static final class PurchaseOrderedAlready extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        PurchaseOrderedAlready(PurchaseId purchase) {
            super(409, "Order [%s] was placed before. Give the new order a number of its own.".formatted(purchase));
        }
    }

    /** Nothing is ordered. */
    public static final class PurchaseEmpty extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        PurchaseEmpty(PurchaseId purchase) {
            super(422, "Order [%s] has no line. Say what is ordered.".formatted(purchase));
        }
    }

    /** A line without a quantity, or a number used twice. */
    public static final class LineWithoutQuantity extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        LineWithoutQuantity(PurchaseId purchase, int line, long units) {
            super(
                    422,
                    "Line [%d] of order [%s] is for [%d] units. Order 1 or more, each line under its own number."
                            .formatted(line, purchase, units));
        }
    }

    /** A price below zero. */
    public static final class PriceBelowZero extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        PriceBelowZero(PurchaseId purchase, int line, Money price) {
            super(
                    422,
                    "Line [%d] of order [%s] is priced at [%s]. A price is zero or more."
                            .formatted(line, purchase, price));
        }
    }

    /** Nobody placed the order. */
    public static final class PurchaseUnknown extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public PurchaseUnknown(PurchaseId purchase) {
            super(
                    409,
                    "Order [%s] was never placed. Check the number, or receive the goods without an order."
                            .formatted(purchase));
        }
    }

    /** The order has no such line. */
    public static final class LineUnknown extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public LineUnknown(PurchaseId purchase, int line) {
            super(409, "Order [%s] has no line [%d]. Look at the order for its lines.".formatted(purchase, line));
        }
    }

    /** Nothing is to come any more. */
    public static final class NothingToCome extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        NothingToCome(PurchaseId purchase, PurchaseState state) {
            super(
                    409,
                    "Order [%s] is %s; nothing of it is to come. There is nothing to change."
                            .formatted(purchase, state.word()));
        }
    }

    /** It cannot be called off any more. */
    public static final class SomethingHasCome extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        SomethingHasCome(PurchaseId purchase) {
            super(
                    409,
                    "Something of order [%s] has come already. Close it instead; what has come stays."
                            .formatted(purchase));
        }
    }

    /** A change needs a reason. */
    public static final class ReasonMissing extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(PurchaseId purchase) {
            super(422, "Why is order [%s] changed? Write the reason.".formatted(purchase));
        }
    }

    /** No quote and no price. */
    public static final class PriceMissing extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        PriceMissing(PurchaseId purchase, int line) {
            super(
                    422,
                    "Line [%d] of order [%s] has neither a quote nor a price. Choose a quote or give unit and price."
                            .formatted(line, purchase));
        }
    }

    /** Lines in two currencies. */
    public static final class TwoCurrencies extends PurchaseRefused {
        private static final long serialVersionUID = 1L;

        TwoCurrencies(PurchaseId purchase, String one, String other) {
            super(
                    422,
                    "Order [%s] has prices in [%s] and in [%s]. Place one order for each currency."
                            .formatted(purchase, one, other));
        }
    }
}
