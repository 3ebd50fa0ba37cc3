package org.bandtrail.supplystock.journal;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * The journal of a month. Pure: postings and accounts in, lines out.
 *
 * @param closed whether the month is closed, so that the journal is final
 * @param lines by currency, reason and account
 * @param unmapped our accounts without one of the organisation's
 * @param sums debits and credits of each currency
 */
public record Journal(YearMonth month, boolean closed, List<Line> lines, List<String> unmapped, List<Sum> sums) {

    /**
     * One line, in major units of its currency with as many decimals as the currency has (ISO 4217: 0 for JPY, 2 for
     * USD, 3 for KWD, 4 for CLF).
     *
     * @param number 1, 2, 3 ... within the month
     * @param account the organisation's number, null if unmapped
     * @param debit zero on a credit line
     */
    public record Line(
            int number,
            String what,
            String ours,
            @Nullable String account,
            @Nullable String accountName,
            String currency,
            BigDecimal debit,
            BigDecimal credit) {}

    /** Debits and credits of one currency, in minor units. */
    public record Sum(String currency, long debitMinor, long creditMinor) {}

    static Journal of(YearMonth month, boolean closed, List<Posting> postings, List<ChartAccount> accounts) {
        Map<String, ChartAccount> chart =
                accounts.stream().collect(Collectors.toMap(ChartAccount::ours, Function.identity()));
        List<Line> lines = new ArrayList<>();
        Set<String> unmapped = new TreeSet<>();
        Map<String, Sum> sums = new TreeMap<>();
        for (Posting posting : postings) {
            ChartAccount account = mapped(chart, posting.ours());
            if (account == null) {
                unmapped.add(posting.ours());
            }
            long debit = Math.max(posting.minor(), 0);
            long credit = Math.max(-posting.minor(), 0);
            lines.add(new Line(
                    lines.size() + 1,
                    posting.what(),
                    posting.ours(),
                    account == null ? null : account.number(),
                    account == null ? null : account.name(),
                    posting.currency(),
                    major(debit, posting.currency()),
                    major(credit, posting.currency())));
            sums.merge(
                    posting.currency(),
                    new Sum(posting.currency(), debit, credit),
                    (one, other) -> new Sum(
                            one.currency(),
                            one.debitMinor() + other.debitMinor(),
                            one.creditMinor() + other.creditMinor()));
        }
        return new Journal(month, closed, List.copyOf(lines), List.copyOf(unmapped), List.copyOf(sums.values()));
    }

    /** The account of exactly this, else of its kind: {@code site:S-MILL}, else {@code site}. */
    private static @Nullable ChartAccount mapped(Map<String, ChartAccount> chart, String ours) {
        ChartAccount exact = chart.get(ours);
        return exact != null ? exact : chart.get(ours.split(":", 2)[0]);
    }

    private static BigDecimal major(long minor, String currency) {
        return BigDecimal.valueOf(minor, Money.zero(currency).minorDigits());
    }

    /**
     * This journal, if it may leave the house.
     *
     * @throws ChartRefused if debits are not credits, or a posting has no account
     */
    public Journal exportable() {
        for (Sum sum : sums) {
            if (sum.debitMinor() != sum.creditMinor()) {
                throw new ChartRefused.JournalUnbalanced(month, sum.currency(), sum.debitMinor() - sum.creditMinor());
            }
        }
        if (!unmapped.isEmpty()) {
            throw new ChartRefused.PostingUnmapped(month, new TreeSet<>(unmapped));
        }
        return this;
    }
}
