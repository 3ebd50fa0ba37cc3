package org.bandtrail.supplystock.batches;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;

/** Why a wish about a batch is refused. Each message names the batch, the value, and what to do. */
public abstract sealed class BatchRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private BatchRefused(String message) {
        super(message);
    }

    /** The batch is in the books already. */
    public static final class BatchAlreadyReceived extends BatchRefused {
        private static final long serialVersionUID = 1L;

        BatchAlreadyReceived(BatchId batch, Pieces pieces) {
            super("Batch [%s] was received before with %s. Give the new batch a label of its own."
                    .formatted(batch, pieces));
        }
    }

    /** A batch needs pieces. */
    public static final class BatchWithoutPieces extends BatchRefused {
        private static final long serialVersionUID = 1L;

        BatchWithoutPieces(BatchId batch, Pieces pieces) {
            super("Batch [%s] cannot be received with %s. Count them and enter the number.".formatted(batch, pieces));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The material does not come on batches. */
    public static final class NotCounted extends BatchRefused {
        private static final long serialVersionUID = 1L;

        NotCounted(BatchId batch, Object kind) {
            super("Batch [%s] cannot hold material of kind %s. Receive tape and mesh as reels.".formatted(batch, kind));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The depot does not have so many. */
    public static final class TooFewInDepot extends BatchRefused {
        private static final long serialVersionUID = 1L;

        TooFewInDepot(BatchId batch, DepotId depot, Pieces wanted, Pieces there) {
            super("Batch [%s] has %s in depot %s, not %s. Hand out fewer, or take the rest from another batch."
                    .formatted(batch, there, depot, wanted));
        }
    }

    /** Nothing was asked for. */
    public static final class NothingWanted extends BatchRefused {
        private static final long serialVersionUID = 1L;

        NothingWanted(BatchId batch, Pieces wanted) {
            super("Batch [%s]: %s cannot be handed out. Enter one or more.".formatted(batch, wanted));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** Books and field agree at this place; there is nothing to settle. */
    public static final class NothingToSettle extends BatchRefused {
        private static final long serialVersionUID = 1L;

        NothingToSettle(BatchId batch, Place place, Pieces balance) {
            super("Batch [%s] has %s at %s, and that adds up. Only a missing or a negative balance can be settled."
                    .formatted(batch, balance, place));
        }
    }

    /** A settlement needs a reason. */
    public static final class ReasonMissing extends BatchRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(BatchId batch) {
            super("Settling batch [%s] needs a reason. Say what was found out.".formatted(batch));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The field used it before anybody entered its receipt, so nobody knows what it is. */
    public static final class ReceiptMissing extends BatchRefused {
        private static final long serialVersionUID = 1L;

        ReceiptMissing(BatchId batch) {
            super(
                    "Batch [%s] came from the field and its receipt is not in the books. Receive it first, then hand it out."
                            .formatted(batch));
        }
    }
}
