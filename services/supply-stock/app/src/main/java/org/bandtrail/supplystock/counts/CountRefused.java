package org.bandtrail.supplystock.counts;

import java.util.List;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.supplystock.holdings.Place;

/** Why a wish about a count is refused. Each message names the count, the value, and what to do. */
public abstract sealed class CountRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private CountRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    private static String some(List<?> lines) {
        String first = lines.stream().limit(5).map(Object::toString).collect(Collectors.joining(", "));
        return lines.size() > 5 ? first + " and " + (lines.size() - 5) + " more" : first;
    }

    /** The identity is taken, or the same place is being counted. */
    public static final class CountOpenAlready extends CountRefused {
        private static final long serialVersionUID = 1L;

        CountOpenAlready(Object count, Place scope) {
            super(409, "Count [%s] of %s is open already. Finish or cancel it first.".formatted(count, scope));
        }
    }

    /** Nobody opened it. */
    public static final class CountUnknown extends CountRefused {
        private static final long serialVersionUID = 1L;

        CountUnknown(CountId count) {
            super(404, "Count [%s] is not known. Look at the list of counts.".formatted(count));
        }
    }

    /** Only depots and bins are counted. */
    public static final class NotCountable extends CountRefused {
        private static final long serialVersionUID = 1L;

        NotCountable(Place scope) {
            super(422, "[%s] cannot be counted. Name a depot, or one of its bins.".formatted(scope));
        }
    }

    /** More lines than one count can hold. */
    public static final class TooMuchForOneCount extends CountRefused {
        private static final long serialVersionUID = 1L;

        TooMuchForOneCount(Place scope, int limit) {
            super(422, "%s has more than %d reels and batches. Count it bin by bin.".formatted(scope, limit));
        }
    }

    /** The count is not at this step. */
    public static final class NotAtThisStep extends CountRefused {
        private static final long serialVersionUID = 1L;

        NotAtThisStep(CountId count, Object stage, String what) {
            super(
                    409,
                    "Count [%s] is %s; %s is not possible now. Look at the count and go on from there."
                            .formatted(count, stage, what));
        }
    }

    /** A figure below zero. */
    public static final class NoFigure extends CountRefused {
        private static final long serialVersionUID = 1L;

        NoFigure(String id, long quantity) {
            super(422, "[%d] cannot be counted of %s. Enter 0 if it is not there.".formatted(quantity, id));
        }
    }

    /** The place is not part of the count. */
    public static final class OutsideTheCount extends CountRefused {
        private static final long serialVersionUID = 1L;

        OutsideTheCount(CountId count, Place scope, Place place) {
            super(422, "Count [%s] is of %s, not of %s. Open a count there.".formatted(count, scope, place));
        }
    }

    /** It lies in several bins. */
    public static final class WhichBin extends CountRefused {
        private static final long serialVersionUID = 1L;

        WhichBin(String id, List<Place> places) {
            super(
                    422,
                    "%s is expected in several places (%s). Say in which one you counted.".formatted(id, some(places)));
        }
    }

    /** It does not have to be counted again. */
    public static final class NotToBeRecounted extends CountRefused {
        private static final long serialVersionUID = 1L;

        NotToBeRecounted(String id) {
            super(409, "%s does not have to be counted again. Count only what the list names.".formatted(id));
        }
    }

    /** The same person counts again. */
    public static final class SamePersonAgain extends CountRefused {
        private static final long serialVersionUID = 1L;

        SamePersonAgain(String id, Object person) {
            super(
                    409,
                    "%s counted %s before. Let somebody else count it again, or say that nobody else is there."
                            .formatted(person, id));
        }
    }

    /** Lines have no figure. */
    public static final class NotAllCounted extends CountRefused {
        private static final long serialVersionUID = 1L;

        NotAllCounted(CountId count, List<?> open) {
            super(
                    409,
                    "Count [%s] has %d lines without a figure: %s. Enter 0 for what is not there."
                            .formatted(count, open.size(), some(open)));
        }
    }

    /** The line does not differ, or is not there. */
    public static final class NothingToExplain extends CountRefused {
        private static final long serialVersionUID = 1L;

        NothingToExplain(CountId count, Object line) {
            super(409, "Count [%s] has no difference at [%s]. Choose a line that differs.".formatted(count, line));
        }
    }

    /** Something has no reason. */
    public static final class ReasonsMissing extends CountRefused {
        private static final long serialVersionUID = 1L;

        ReasonsMissing(CountId count, List<?> lines) {
            super(422, "Count [%s] needs a reason for %s. Say what was found out.".formatted(count, some(lines)));
        }
    }

    /** Somebody else has to approve. */
    public static final class SecondPersonNeeded extends CountRefused {
        private static final long serialVersionUID = 1L;

        SecondPersonNeeded(CountId count, Object person, long minor, long from) {
            super(
                    409,
                    "The differences of count [%s] are worth %d minor units; from %d on somebody approves who did not count, and %s did."
                            .formatted(count, minor, from, person));
        }
    }

    /** What was found is not the books' to move. */
    public static final class FoundButNotHere extends CountRefused {
        private static final long serialVersionUID = 1L;

        FoundButNotHere(CountId count, String id, String where) {
            super(
                    409,
                    "Count [%s] found %s, which is %s. Enter how it came here first, then enter 0 for it on this count."
                            .formatted(count, id, where));
        }
    }
}
