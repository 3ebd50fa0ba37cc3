package org.bandtrail.supplystock.handouts;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Pieces;

/** Why a handout is refused. */
public abstract sealed class KitRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private KitRefused(String message) {
        super(message);
    }

    /** The kit is out already. */
    public static final class KitAlreadyHandedOut extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitAlreadyHandedOut(KitId kit) {
            super("Kit [%s] was handed out before. Give the new kit a number of its own.".formatted(kit));
        }
    }

    /** Nothing is in the kit. */
    public static final class KitEmpty extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitEmpty(KitId kit) {
            super("Kit [%s] has nothing in it. Add a reel or some fasteners.".formatted(kit));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The depot has too few fasteners over all batches. */
    public static final class TooFewFasteners extends KitRefused {
        private static final long serialVersionUID = 1L;

        TooFewFasteners(DepotId depot, MaterialCode material, Pieces wanted, Pieces lacking) {
            super("Depot [%s] lacks %s of the %s of %s wanted. Hand out fewer, or receive more first."
                    .formatted(depot, lacking, wanted, material));
        }
    }
}
