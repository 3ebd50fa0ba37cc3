package org.bandtrail.supplystock.closechecks;

import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Nothing that was missing, or below zero, by the end of the month is still so. */
@Component
class DiscrepanciesCheck implements CloseCheck {
    private static final String OF_ONE = """
            SELECT '%1$s ' || p.id || ' ' || p.place_kind || ':' || p.place_id || ' ' || p.quantity
            FROM %1$s_place p
            WHERE ((p.place_kind = 'missing' AND p.quantity <> 0)
                OR (p.place_kind NOT IN ('supplier', 'slit') AND p.quantity < 0))
              AND EXISTS (SELECT 1 FROM %1$s_history h
                WHERE h.id = p.id AND p.place_kind || ':' || p.place_id IN (h.source, h.target)
                  AND h.happened_at < :end)""";

    private final JdbcClient jdbc;

    DiscrepanciesCheck(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "open-discrepancies";
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public CheckFound look(YearMonth month) {
        List<String> open = jdbc.sql(OF_ONE.formatted("reel") + " UNION ALL " + OF_ONE.formatted("batch"))
                .param("end", month.plusMonths(1).atDay(1).atStartOfDay().atOffset(ZoneOffset.UTC))
                .query(String.class)
                .list();
        return CheckFound.of(
                name(),
                open,
                "Books and field agree about everything until the end of the month.",
                "Open questions between books and field: %d.");
    }
}
