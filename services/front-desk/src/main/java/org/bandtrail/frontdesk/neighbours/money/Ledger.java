package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What supply-stock says in its ledger. Quantities are mm of reels and pieces of fasteners, money minor units. */
public final class Ledger {
    private Ledger() {}

    /** A month per item and place, with the law of the money up to its end. */
    public record Trial(
            YearMonth period,
            List<TrialLine> rows,
            @Nullable String next,
            List<Total> totals,
            List<Law> law) {}

    /** opening + in - out + adjusted = closing, in quantity and in value. */
    public record TrialLine(
            String materialCode,
            String kind,
            String currency,
            String place,
            boolean stock,
            long opening,
            long in,
            long out,
            long adjusted,
            long closing,
            long openingMinor,
            long inMinor,
            long outMinor,
            long adjustedMinor,
            long closingMinor) {}

    /** Stock of one kind. */
    public record Total(
            String kind, String currency, long opening, long closing, long openingMinor, long closingMinor) {}

    /** Paid = in stock + paid by accounts. */
    public record Law(String currency, long paidMinor, long stockMinor, long accountsMinor, long differenceMinor) {}

    /** The books at a past moment. */
    public record Past(
            String by,
            Instant at,
            Instant knownAt,
            List<PastLine> rows,
            @Nullable String next,
            List<PastTotal> totals) {}

    /** One balance as known then and as known now. */
    public record PastLine(
            String name,
            String materialCode,
            String kind,
            String currency,
            long quantityThen,
            long minorThen,
            long quantityNow,
            long minorNow) {
        /** Whether something was told since. */
        public boolean toldLater() {
            return quantityThen != quantityNow || minorThen != minorNow;
        }
    }

    /** Sums of one currency. */
    public record PastTotal(String currency, long minorThen, long minorNow) {}

    /** One line. */
    public record Entry(
            String line,
            String holding,
            String id,
            String materialCode,
            String kind,
            String currency,
            String what,
            boolean adjusts,
            @Nullable String note,
            @Nullable String source,
            @Nullable String target,
            long quantity,
            long outMinor,
            long inMinor,
            @Nullable String account,
            long accountQuantity,
            long accountMinor,
            String siteId,
            String treeId,
            String personId,
            String by,
            Instant happenedAt,
            Instant recordedAt,
            String period) {}

    /** How fasteners are valued. */
    public record Policies(
            List<Policy> rows,
            int year,
            String thisYear,
            String nextYear,
            boolean thisYearBegun,
            boolean nextYearBegun) {}

    /** A method from a year on. */
    public record Policy(int year, String method, String reason, String byPerson, Instant setAt, boolean replaced) {}
}
