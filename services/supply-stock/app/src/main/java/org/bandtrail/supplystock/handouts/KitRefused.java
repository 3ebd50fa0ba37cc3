package org.bandtrail.supplystock.handouts;

import java.util.List;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.PersonId;
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

    /** The number is taken. */
    public static final class KitNumberTaken extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitNumberTaken(KitId kit, String stage) {
            super("Kit [%s] is %s already. Give the new kit a number of its own.".formatted(kit, stage));
        }
    }

    /** The kit is not reserved, so it cannot be released. */
    public static final class KitNotReserved extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitNotReserved(KitId kit, String stage) {
            super("Kit [%s] is %s, not reserved, so there is nothing to give free.".formatted(kit, stage));
        }
    }

    /** The kit was given free, and others may have its reels. */
    public static final class KitWasReleased extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitWasReleased(KitId kit) {
            super("Kit [%s] was given free again. Reserve a new kit from the same list.".formatted(kit));
        }
    }

    /** Somebody else signs. */
    public static final class SignedBySomebodyElse extends KitRefused {
        private static final long serialVersionUID = 1L;

        SignedBySomebodyElse(KitId kit, PersonId person, PersonId holder) {
            super("Kit [%s] was handed out to %s, so %s cannot sign for it. %s signs with their own sign-in."
                    .formatted(kit, holder, person, holder));
        }
    }

    /** The kit is not out, so nobody can sign for it. */
    public static final class KitNotOut extends KitRefused {
        private static final long serialVersionUID = 1L;

        KitNotOut(KitId kit, String stage) {
            super("Kit [%s] is %s, not handed out. Hand it out first, then sign.".formatted(kit, stage));
        }
    }

    /** The depot cannot give what the trees take. */
    public static final class StockIsShort extends KitRefused {
        private static final long serialVersionUID = 1L;

        /** @param lacking what is lacking, in words, one sentence for each material */
        public StockIsShort(DepotId depot, List<String> lacking) {
            super("Depot [%s] cannot fill this list: %s Shorten the list, or receive or release stock first."
                    .formatted(depot, String.join(" ", lacking)));
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
