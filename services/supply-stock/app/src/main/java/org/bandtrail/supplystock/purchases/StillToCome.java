package org.bandtrail.supplystock.purchases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Works out what is still to come of some orders, and where each stands, by the pure rules. */
final class StillToCome {
    private final JdbcClient jdbc;

    StillToCome(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Left(String purchase, int line, long remaining, long committed) {}

    void reckon(Collection<String> purchases) {
        String[] touched = purchases.toArray(String[]::new);
        List<Left> left = jdbc.sql("""
                        SELECT l.*, p.state IN ('closed', 'cancelled') AS ended
                        FROM purchase_line l JOIN purchase p USING (purchase_id)
                        WHERE l.purchase_id = ANY (?::varchar[])""")
                .params(new Object[] {touched})
                .query((row, number) -> {
                    OrderedLine line = new OrderedLine(
                            row.getInt("line"),
                            new MaterialCode(row.getString("material")),
                            MaterialKind.valueOf(row.getString("kind")),
                            new Packing(OrderUnit.valueOf(row.getString("unit")), row.getLong("content")),
                            row.getLong("units"),
                            row.getLong("unit_price"),
                            null,
                            null,
                            null);
                    long units = row.getLong("received_units");
                    long quantity = row.getLong("received");
                    boolean ended = row.getBoolean("ended");
                    return new Left(
                            row.getString("purchase_id"),
                            line.line(),
                            ended ? 0 : line.remaining(units, quantity),
                            ended ? 0 : line.committed(units, quantity));
                })
                .list();
        write(left);
        jdbc.sql("""
                        UPDATE purchase p SET state = CASE WHEN l.come = 0 THEN 'ordered'
                            WHEN l.remaining > 0 THEN 'partly received' ELSE 'received' END
                        FROM (SELECT purchase_id, sum(remaining) AS remaining,
                                count(*) FILTER (WHERE received_units > 0 OR received > 0) AS come
                            FROM purchase_line WHERE purchase_id = ANY (?::varchar[]) GROUP BY purchase_id) l
                        WHERE l.purchase_id = p.purchase_id AND p.state NOT IN ('closed', 'cancelled')""").params(new Object[] {touched}).update();
    }

    private void write(List<Left> left) {
        List<Long> remaining = new ArrayList<>();
        List<Long> committed = new ArrayList<>();
        left.forEach(each -> {
            remaining.add(each.remaining());
            committed.add(each.committed());
        });
        jdbc.sql("""
                        UPDATE purchase_line AS l SET remaining = n.remaining, committed = n.committed
                        FROM unnest(?::varchar[], ?::int[], ?::bigint[], ?::bigint[])
                            AS n (purchase_id, line, remaining, committed)
                        WHERE l.purchase_id = n.purchase_id AND l.line = n.line""")
                .params(
                        left.stream().map(Left::purchase).toArray(String[]::new),
                        left.stream().map(Left::line).toArray(Integer[]::new),
                        remaining.toArray(Long[]::new),
                        committed.toArray(Long[]::new))
                .update();
    }
}
