package org.bandtrail.supplystock.holds;

import java.time.Instant;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;

/** Why a reservation, or a handout against one, is refused. */
public abstract sealed class HoldRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private HoldRefused(String message) {
        super(message);
    }

    /** Another kit has it. */
    public static final class ReservedForAnotherKit extends HoldRefused {
        private static final long serialVersionUID = 1L;

        ReservedForAnotherKit(HeldId held, KitId other, Instant until) {
            super("%s is reserved for kit %s until %s. Take another one, or release kit %s first."
                    .formatted(held.inWords(), other, until, other));
        }
    }

    /** The depot does not have it. */
    public static final class NotInTheDepot extends HoldRefused {
        private static final long serialVersionUID = 1L;

        NotInTheDepot(HeldId held, DepotId depot) {
            super("%s is not in depot %s, so it cannot be reserved. Take another one, or enter its return first."
                    .formatted(held.inWords(), depot));
        }
    }

    /** There is not so much left after what other kits have reserved. */
    public static final class TooLittleLeft extends HoldRefused {
        private static final long serialVersionUID = 1L;

        TooLittleLeft(HeldId held, long wanted, long left) {
            super("%s has %d left that nobody has reserved, and %d are wanted."
                    .concat(" Take fewer, or release another kit first.")
                    .formatted(held.inWords(), left, wanted));
        }
    }
}
