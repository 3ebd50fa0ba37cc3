package org.bandtrail.supplystock.books;

import java.time.YearMonth;
import org.bandtrail.supplystock.costpolicies.YearsBegun;
import org.bandtrail.supplystock.periods.BooksBegin;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Tells which months and years have entries. */
@Component
final class FirstEntries implements BooksBegin, YearsBegun {
    private final JdbcClient jdbc;

    FirstEntries(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public @Nullable YearMonth month() {
        String first = jdbc.sql("SELECT coalesce(min(period), '') FROM ledger_trial")
                .query(String.class)
                .single();
        return first.isEmpty() ? null : YearMonth.parse(first);
    }

    @Override
    public boolean begun(int year) {
        return jdbc.sql("SELECT EXISTS (SELECT FROM ledger_trial WHERE period BETWEEN ? AND ?)")
                .params(year + "-01", year + "-12")
                .query(Boolean.class)
                .single();
    }
}
