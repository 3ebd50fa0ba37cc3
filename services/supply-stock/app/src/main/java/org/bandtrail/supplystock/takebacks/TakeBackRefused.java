package org.bandtrail.supplystock.takebacks;

import org.bandtrail.eventstore.Refusal;

/** Why a move is not taken back. */
public abstract sealed class TakeBackRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private TakeBackRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 409;
    }

    /** The books know no move of it. */
    public static final class NothingMoved extends TakeBackRefused {
        private static final long serialVersionUID = 1L;

        NothingMoved(String subject) {
            super("The books know no move of [%s]. Check the label.".formatted(subject));
        }
    }

    /** Something else moved it since. */
    public static final class MovedSince extends TakeBackRefused {
        private static final long serialVersionUID = 1L;

        MovedSince(LastMove last) {
            super("[%s] was moved again since: it was %s, from %s to %s. Look where it is, and move it from there."
                    .formatted(last.subject(), last.what(), last.source(), last.target()));
        }
    }

    /** Too much time went by. */
    public static final class TooLate extends TakeBackRefused {
        private static final long serialVersionUID = 1L;

        TooLate(LastMove last, long minutes) {
            super("[%s] was %s more than [%d] minutes ago. Move it back by hand, as a move of its own."
                    .formatted(last.subject(), last.what(), minutes));
        }
    }

    /** What happened to it has no opposite. */
    public static final class NoWayBack extends TakeBackRefused {
        private static final long serialVersionUID = 1L;

        NoWayBack(LastMove last) {
            super("[%s] was %s; that is not taken back by a press. Correct it where it is corrected, or ask the lead."
                    .formatted(last.subject(), last.what()));
        }
    }
}
