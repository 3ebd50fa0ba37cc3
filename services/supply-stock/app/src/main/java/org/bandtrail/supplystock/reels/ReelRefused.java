package org.bandtrail.supplystock.reels;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;

/** Why a wish about a reel is refused. Each message names the reel, the value, and what to do. */
public abstract sealed class ReelRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ReelRefused(String message) {
        super(message);
    }

    /** The reel is in the books already. */
    public static final class ReelAlreadyReceived extends ReelRefused {
        private static final long serialVersionUID = 1L;

        ReelAlreadyReceived(ReelId reel, Length length) {
            super("Reel [%s] was received before with %s. Give the new reel a label of its own."
                    .formatted(reel, length));
        }
    }

    /** A reel without length cannot be received. */
    public static final class ReelWithoutLength extends ReelRefused {
        private static final long serialVersionUID = 1L;

        ReelWithoutLength(ReelId reel, Length length) {
            super("Reel [%s] cannot be received with a length of %s. Measure it and enter what is on it."
                    .formatted(reel, length));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The material does not come on reels. */
    public static final class NotOnReels extends ReelRefused {
        private static final long serialVersionUID = 1L;

        NotOnReels(ReelId reel, Object kind) {
            super("Reel [%s] cannot hold material of kind %s. Receive fasteners as a batch.".formatted(reel, kind));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The depot does not have the reel. */
    public static final class ReelNotInDepot extends ReelRefused {
        private static final long serialVersionUID = 1L;

        ReelNotInDepot(ReelId reel, DepotId depot, String whereItIs) {
            super(
                    "Reel [%s] is not in depot %s; the books have it %s. Hand out another reel, or enter its return first."
                            .formatted(reel, depot, whereItIs));
        }
    }

    /** Books and field agree at this place; there is nothing to settle. */
    public static final class NothingToSettle extends ReelRefused {
        private static final long serialVersionUID = 1L;

        NothingToSettle(ReelId reel, Place place, Length balance) {
            super("Reel [%s] has %s at %s, and that adds up. Only a missing or a negative balance can be settled."
                    .formatted(reel, balance, place));
        }
    }

    /** A settlement needs a reason. */
    public static final class ReasonMissing extends ReelRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(ReelId reel) {
            super("Settling reel [%s] needs a reason. Say what was found out.".formatted(reel));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The field used it before anybody entered its receipt, so nobody knows what it is. */
    public static final class ReceiptMissing extends ReelRefused {
        private static final long serialVersionUID = 1L;

        ReceiptMissing(ReelId reel) {
            super(
                    "Reel [%s] came from the field and its receipt is not in the books. Receive it first, then hand it out."
                            .formatted(reel));
        }
    }
}
