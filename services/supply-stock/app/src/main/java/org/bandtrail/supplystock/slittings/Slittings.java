package org.bandtrail.supplystock.slittings;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads slittings. */
@Repository
public class Slittings {
    private final JdbcClient jdbc;

    Slittings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page, the newest first.
     *
     * @param before slitting before which the page begins, or null for the newest
     */
    public List<SlittingRow> page(@Nullable String before, int limit) {
        return jdbc
                .sql("SELECT slitting_id FROM slitting s WHERE (:before::varchar IS NULL OR (slit_at, slitting_id) <"
                        + " (SELECT slit_at, slitting_id FROM slitting WHERE slitting_id = :before))"
                        + " ORDER BY slit_at DESC, slitting_id DESC LIMIT :limit")
                .param("before", before)
                .param("limit", limit)
                .query(String.class)
                .list()
                .stream()
                .map(id -> one(id).orElseThrow())
                .toList();
    }

    /** One slitting, empty if nobody did it. */
    public Optional<SlittingRow> one(String slitting) {
        List<SlittingRow.Made> made = jdbc.sql("""
                        SELECT t.reel_id, t.material, t.width_mm, coalesce(b.cost_minor, 0), coalesce(b.currency, 'USD')
                        FROM slitting_strip t LEFT JOIN reel_balance b ON b.id = t.reel_id
                        WHERE t.slitting_id = ? ORDER BY t.strip""")
                .param(slitting)
                .query((row, number) -> new SlittingRow.Made(
                        row.getString(1), row.getString(2), row.getLong(3), Money.of(row.getLong(4), row.getString(5))))
                .list();
        return jdbc.sql("SELECT * FROM slitting WHERE slitting_id = ?")
                .param(slitting)
                .query((row, number) -> {
                    long length = row.getLong("length_mm");
                    long width = row.getLong("width_mm");
                    long trim = row.getLong("trim_mm");
                    long widths =
                            made.stream().mapToLong(SlittingRow.Made::widthMm).sum();
                    Money cost = made.stream()
                            .map(SlittingRow.Made::cost)
                            .reduce(Money::plus)
                            .orElse(Money.zero("USD"));
                    return new SlittingRow(
                            row.getString("slitting_id"),
                            row.getString("reel_id"),
                            row.getString("material"),
                            length,
                            width,
                            trim,
                            cost,
                            length * width,
                            length * (widths + trim),
                            row.getObject("slit_at", OffsetDateTime.class).toInstant(),
                            row.getString("by_person"),
                            made);
                })
                .optional();
    }

    /** The strips of a slitting, for whoever has to pass a change of cost on to them. */
    public List<Strip> strips(String slitting) {
        return jdbc.sql("SELECT reel_id, material, width_mm FROM slitting_strip WHERE slitting_id = ? ORDER BY strip")
                .param(slitting)
                .query((row, number) -> new Strip(
                        new ReelId(row.getString(1)), new MaterialCode(row.getString(2)), Length.ofMm(row.getLong(3))))
                .list();
    }
}
