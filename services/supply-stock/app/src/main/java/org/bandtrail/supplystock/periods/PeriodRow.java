package org.bandtrail.supplystock.periods;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One month as people see it.
 *
 * @param state {@code running}, {@code open}, {@code closed} or {@code reopening asked}
 * @param closedAt null unless closed by a close of its own; a month before the first close has none
 * @param askedBy who asks to reopen it, null if nobody does
 * @param reason why it should be reopened
 */
public record PeriodRow(
        YearMonth month,
        String state,
        @Nullable Instant closedAt,
        @Nullable String closedBy,
        int checks,
        int signed,
        @Nullable String askedBy,
        @Nullable String reason) {

    /** A signature under a check. */
    public record Signature(String check, long open, String fingerprint, String reason, String by, Instant at) {}

    /** What happened to a month, the oldest first. */
    public record Happened(String what, String detail, String by, Instant at) {}

    /**
     * A check as it stands now.
     *
     * @param passes clean, or signed for exactly what is open now
     * @param signature the last signature, also one that no longer holds; null if nobody signed
     */
    public record Check(
            String check,
            long open,
            String sentence,
            boolean passes,
            @Nullable Signature signature) {}

    /**
     * One month with its checks and history.
     *
     * @param mayClose whether a close would be granted now
     * @param why what stands in the way, null if nothing does
     */
    public record Whole(
            PeriodRow period, boolean mayClose, @Nullable String why, List<Check> checks, List<Happened> history) {}
}
