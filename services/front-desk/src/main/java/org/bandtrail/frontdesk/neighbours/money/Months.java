package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about the months of its books. */
public final class Months {
    private Months() {}

    /**
     * Months, the newest first.
     *
     * @param closedThrough last closed month, null if none is
     * @param toClose month to close next, null while the books are empty
     */
    public record Page(
            List<Month> rows,
            @Nullable YearMonth next,
            YearMonth running,
            @Nullable YearMonth closedThrough,
            @Nullable YearMonth toClose) {}

    /**
     * One month.
     *
     * @param state running, open, closed or reopening asked
     */
    public record Month(
            YearMonth month,
            String state,
            @Nullable Instant closedAt,
            @Nullable String closedBy,
            int checks,
            int signed,
            @Nullable String askedBy,
            @Nullable String reason) {}

    /**
     * One month with its checks.
     *
     * @param why what stands in the way of closing it, null if nothing does
     */
    public record Whole(
            Month period, boolean mayClose, @Nullable String why, List<Check> checks, List<Happened> history) {}

    /** A check as it stands now; it passes when clean or signed as it is. */
    public record Check(
            String check,
            long open,
            String sentence,
            boolean passes,
            @Nullable Signature signature) {}

    /** Somebody answers for what a check found. */
    public record Signature(String check, long open, String fingerprint, String reason, String by, Instant at) {}

    /** What happened to a month. */
    public record Happened(String what, String detail, String by, Instant at) {}
}
