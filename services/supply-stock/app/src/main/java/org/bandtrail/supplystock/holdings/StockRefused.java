package org.bandtrail.supplystock.holdings;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Money;

/**
 * Why a wish about stock in depots, vehicles or on the way is refused, for reels and batches alike. Each message names
 * the reel or batch, the value, and what to do.
 */
public abstract sealed class StockRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private StockRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** The place does not have so much. */
    public static final class NotThere extends StockRefused {
        private static final long serialVersionUID = 1L;

        NotThere(String subject, Place place, Object wanted, Object there, String whereItIs) {
            super(
                    409,
                    "%s cannot be moved by %s from %s; the books have %s there and it is %s. Name the place it is at."
                            .formatted(subject, wanted, place, there, whereItIs));
        }
    }

    /** The kind of move does not go between these places. */
    public static final class MoveUnfit extends StockRefused {
        private static final long serialVersionUID = 1L;

        MoveUnfit(String subject, StockMove move, Place source, Place target) {
            super(
                    422,
                    "%s cannot be [%s] from %s to %s. Name places between which that is done."
                            .formatted(subject, move.word(), source, target));
        }
    }

    /** Nothing is known about what it is, because its receipt is not in the books. */
    public static final class ReceiptUnknown extends StockRefused {
        private static final long serialVersionUID = 1L;

        /** With the reel or batch in words, such as {@code Reel R-1}. */
        public ReceiptUnknown(String subject) {
            super(409, "The receipt of %s is not in the books. Receive it first.".formatted(subject));
        }
    }

    /** The change would leave stock with a cost below zero. */
    public static final class CostBelowZero extends StockRefused {
        private static final long serialVersionUID = 1L;

        CostBelowZero(String subject, long deltaMinor, long inStockMinor) {
            super(
                    422,
                    "A change of [%d] minor units takes the cost of %s below zero; %d are still in stock. Check the amount."
                            .formatted(deltaMinor, subject, inStockMinor));
        }
    }

    /** The currency is another one than that of the receipt. */
    public static final class OtherCurrency extends StockRefused {
        private static final long serialVersionUID = 1L;

        OtherCurrency(String subject, Object amount, String currency) {
            super(
                    422,
                    "Amount [%s] is not in %s, in which %s was bought. Convert it first."
                            .formatted(amount, currency, subject));
        }
    }

    /** More is to be written down than the stock is worth, or nothing. */
    public static final class WriteDownUnfit extends StockRefused {
        private static final long serialVersionUID = 1L;

        WriteDownUnfit(String subject, Money amount, Money inStock) {
            super(
                    422,
                    "%s cannot be written down by [%s]; what is left of it stands in the books at %s. "
                                    .formatted(subject, amount, inStock)
                            + (inStock.minor() > 0
                                    ? "Give more than nothing and at most %s.".formatted(inStock)
                                    : "There is nothing to write down."));
        }
    }

    /** The move would not make any disagreement smaller. */
    public static final class NotACorrection extends StockRefused {
        private static final long serialVersionUID = 1L;

        NotACorrection(String subject, Place source, Place target, Object quantity) {
            super(
                    409,
                    "Moving %s of %s from %s to %s puts nothing right. Name a place where books and field disagree by as much."
                            .formatted(quantity, subject, source, target));
        }
    }

    /** A change without effect. */
    public static final class NothingChanges extends StockRefused {
        private static final long serialVersionUID = 1L;

        NothingChanges(String subject) {
            super(422, "A change of [0] changes nothing about %s. Give the difference.".formatted(subject));
        }
    }

    /** The step needs a reason. */
    public static final class ReasonNeeded extends StockRefused {
        private static final long serialVersionUID = 1L;

        ReasonNeeded(String subject) {
            super(422, "This step on %s needs a reason. Say what was found out.".formatted(subject));
        }
    }
}
