package org.bandtrail.supplystock.discrepancies;

import java.time.LocalDate;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.supplystock.holdings.Place;

/** Why a wish about an open question is refused. */
public abstract sealed class WaitingRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private WaitingRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** Waiting needs a reason. */
    public static final class WaitingWithoutReason extends WaitingRefused {
        private static final long serialVersionUID = 1L;

        WaitingWithoutReason(String id) {
            super(422, "Waiting with %s needs a reason. Say what you are waiting for.".formatted(id));
        }
    }

    /** The day is not ahead, or too far. */
    public static final class DayUnfit extends WaitingRefused {
        private static final long serialVersionUID = 1L;

        DayUnfit(LocalDate until, LocalDate today, int days) {
            super(
                    422,
                    "A question cannot wait until %s. Choose a day after %s, at most %d days ahead."
                            .formatted(until, today, days));
        }
    }

    /** Books and field agree there. */
    public static final class NothingOpen extends WaitingRefused {
        private static final long serialVersionUID = 1L;

        NothingOpen(String material, String id, Place place) {
            super(
                    409,
                    "Books and field agree about %s [%s] at %s. Look at the list again."
                            .formatted(material, id, place));
        }
    }

    /** The other reel or batch has nothing this could be set against. */
    public static final class NothingOppositeThere extends WaitingRefused {
        private static final long serialVersionUID = 1L;

        NothingOppositeThere(String other, String amount) {
            super(
                    409,
                    "%s has no difference of the other kind, and is not out with that person; %s cannot be set against it. Name the reel that was meant."
                            .formatted(other, amount));
        }
    }
}
