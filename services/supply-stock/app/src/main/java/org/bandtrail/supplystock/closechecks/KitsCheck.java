package org.bandtrail.supplystock.closechecks;

import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Nothing that was handed out by the end of the month is still with a person. */
@Component
class KitsCheck implements CloseCheck {
    private final JdbcClient jdbc;

    KitsCheck(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "unsettled-kits";
    }

    @Override
    public int order() {
        return 30;
    }

    @Override
    public CheckFound look(YearMonth month) {
        List<String> open = jdbc.sql("""
                        SELECT k.kit_id || ' ' || l.id || ' ' || coalesce(r.quantity, b.quantity)
                        FROM kit k JOIN kit_line l USING (kit_id)
                        LEFT JOIN reel_place r ON r.id = l.id AND r.place_kind = 'crew' AND r.place_id = k.person_id
                             AND l.kind <> 'FASTENER'
                        LEFT JOIN batch_place b ON b.id = l.id AND b.place_kind = 'crew' AND b.place_id = k.person_id
                             AND l.kind = 'FASTENER'
                        WHERE k.handed_out_at < :end AND coalesce(r.quantity, b.quantity, 0) <> 0""")
                .param("end", month.plusMonths(1).atDay(1).atStartOfDay().atOffset(ZoneOffset.UTC))
                .query(String.class)
                .list();
        return CheckFound.of(
                name(),
                open,
                "Everything handed out by the end of the month was used or came back.",
                "Reels and batches still with somebody from kits of the month or before: %d.");
    }
}
