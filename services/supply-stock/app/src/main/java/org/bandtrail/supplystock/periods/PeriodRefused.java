package org.bandtrail.supplystock.periods;

import java.time.YearMonth;
import java.util.List;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/** Why a wish about a month is refused. */
public abstract sealed class PeriodRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private PeriodRefused(String message) {
        super(message);
    }

    /** Nothing can be signed in, or closed again of, a closed month. */
    public static final class MonthClosedAlready extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        MonthClosedAlready(YearMonth month) {
            super("Month [%s] is closed already. Ask to reopen it, with a reason, if it must change.".formatted(month));
        }
    }

    /** The month still runs, or has not begun. */
    public static final class MonthNotOver extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        MonthNotOver(YearMonth month, YearMonth running) {
            super("Month [%s] has not ended; [%s] runs now (months are those of UTC). Close it when it is over."
                    .formatted(month, running));
        }
    }

    /** Months are closed one after the other. */
    public static final class MonthOutOfOrder extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        MonthOutOfOrder(YearMonth month, YearMonth next) {
            super("Month [%s] cannot be closed before [%s], or there would be a gap. Close [%s] first."
                    .formatted(month, next, next));
        }
    }

    /** At least one check is neither clean nor signed as it stands now. */
    public static final class ChecksOpen extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        ChecksOpen(YearMonth month, List<CheckFound> open) {
            super("Month [%s] cannot be closed yet. %s Settle it, or sign it with a reason."
                    .formatted(
                            month,
                            open.stream()
                                    .map(found -> "[%s]: %s".formatted(found.check(), found.sentence()))
                                    .collect(Collectors.joining(" "))));
        }
    }

    /** A clean check needs nobody to answer for it. */
    public static final class CheckCleanAlready extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        CheckCleanAlready(YearMonth month, String check) {
            super("Check [%s] of month [%s] is clean, so there is nothing to sign. Go on to the next check."
                    .formatted(check, month));
        }
    }

    /** Only the last closed month can be reopened, or there would be a gap. */
    public static final class NotTheLastClosed extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        NotTheLastClosed(YearMonth month, @Nullable YearMonth last) {
            super(
                    last == null
                            ? "Month [%s] cannot be reopened: no month is closed.".formatted(month)
                            : "Month [%s] cannot be reopened: only the last closed one can, which is [%s]. Start there."
                                    .formatted(month, last));
        }
    }

    /** Somebody asked before. */
    public static final class ReopeningAskedAlready extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        ReopeningAskedAlready(PeriodEvent.ReopeningAsked asked) {
            super("[%s] asked already to reopen [%s]: %s. A second person can grant or drop that."
                    .formatted(asked.by(), asked.month(), asked.reason()));
        }
    }

    /** There is no request to grant or drop. */
    public static final class NobodyAskedToReopen extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        NobodyAskedToReopen(YearMonth month) {
            super("Nobody asked to reopen month [%s]. Ask first, with a reason.".formatted(month));
        }
    }

    /** Who asks does not grant. */
    public static final class SecondPersonNeeded extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        SecondPersonNeeded(YearMonth month, PersonId asker) {
            super("[%s] asked to reopen month [%s], so another person has to grant it.".formatted(asker, month));
        }
    }

    /** A reason is part of the wish. */
    public static final class ReasonMissing extends PeriodRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(YearMonth month) {
            super("A reason is missing for month [%s]. Write in a few words why.".formatted(month));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
