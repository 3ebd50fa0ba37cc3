package org.bandtrail.supplystock.periods;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the months of the books. */
@Repository
public class Periods {
    private final JdbcClient jdbc;
    private final ObjectProvider<BooksBegin> begin;

    Periods(JdbcClient jdbc, ObjectProvider<BooksBegin> begin) {
        this.jdbc = jdbc;
        this.begin = begin;
    }

    /** The last closed month, null if none is. */
    public @Nullable YearMonth closedThrough() {
        return jdbc.sql("SELECT max(month) AS month FROM period_closing")
                .query((row, number) -> Optional.ofNullable(month(row)))
                .single()
                .orElse(null);
    }

    /** Whether a month is closed; all months before a closed one are. */
    public boolean closed(YearMonth month) {
        YearMonth last = closedThrough();
        return last != null && !month.isAfter(last);
    }

    /**
     * The month to close next: after the last closed one, or the first with an entry.
     *
     * @return null while the books are empty
     */
    public @Nullable YearMonth next() {
        YearMonth last = closedThrough();
        return last != null ? last.plusMonths(1) : first();
    }

    private @Nullable YearMonth first() {
        BooksBegin known = begin.getIfAvailable();
        return known == null ? null : known.month();
    }

    /**
     * Months from the running one back to the first with an entry, the newest first.
     *
     * @param before months before this one, null for the newest
     */
    public List<PeriodRow> page(YearMonth running, @Nullable YearMonth before, int limit) {
        YearMonth newest = before == null ? running : before.minusMonths(1);
        YearMonth first = first();
        YearMonth oldest = newest.minusMonths(limit - 1L);
        if (first == null || oldest.isBefore(first)) {
            oldest = first == null ? running : first;
        }
        return rows(oldest, newest, running);
    }

    /** One month. */
    public PeriodRow one(YearMonth month, YearMonth running) {
        return rows(month, month, running).getFirst();
    }

    private List<PeriodRow> rows(YearMonth oldest, YearMonth newest, YearMonth running) {
        return jdbc.sql("""
                        SELECT m.month::date AS month, c.closed_at, c.closed_by, coalesce(c.checks, 0) AS checks,
                               coalesce(c.signed, 0) AS signed, r.asked_by, r.reason,
                               CASE WHEN r.month IS NOT NULL THEN 'reopening asked'
                                    WHEN m.month <= (SELECT max(month) FROM period_closing) THEN 'closed'
                                    WHEN m.month >= :running THEN 'running' ELSE 'open' END AS state
                        FROM generate_series(:oldest::date, :newest::date, interval '1 month') AS m (month)
                        LEFT JOIN period_closing c ON c.month = m.month
                        LEFT JOIN period_request r ON r.month = m.month
                        ORDER BY m.month DESC""")
                .param("oldest", oldest.atDay(1))
                .param("newest", newest.atDay(1))
                .param("running", running.atDay(1))
                .query((row, number) -> new PeriodRow(
                        Objects.requireNonNull(month(row)),
                        row.getString("state"),
                        instant(row, "closed_at"),
                        row.getString("closed_by"),
                        row.getInt("checks"),
                        row.getInt("signed"),
                        row.getString("asked_by"),
                        row.getString("reason")))
                .list();
    }

    /** Signatures under the checks of a month. */
    List<PeriodRow.Signature> signatures(YearMonth month) {
        return jdbc.sql("SELECT * FROM period_signature WHERE month = ? ORDER BY check_name")
                .param(month.atDay(1))
                .query((row, number) -> new PeriodRow.Signature(
                        row.getString("check_name"),
                        row.getLong("open_things"),
                        row.getString("fingerprint"),
                        row.getString("reason"),
                        row.getString("signed_by"),
                        Objects.requireNonNull(instant(row, "signed_at"))))
                .list();
    }

    /** What happened to a month, the oldest first. */
    List<PeriodRow.Happened> history(YearMonth month) {
        return jdbc.sql("SELECT * FROM period_history WHERE month = ? ORDER BY position")
                .param(month.atDay(1))
                .query((row, number) -> new PeriodRow.Happened(
                        row.getString("what"),
                        row.getString("detail"),
                        row.getString("by_person"),
                        Objects.requireNonNull(instant(row, "at"))))
                .list();
    }

    private static @Nullable YearMonth month(ResultSet row) throws SQLException {
        LocalDate day = row.getObject("month", LocalDate.class);
        return day == null ? null : YearMonth.from(day);
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
