package org.bandtrail.siteinstalls.bands;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All bands as they stand. */
@Repository
public class Bands {
    private final JdbcClient jdbc;
    private final BandFlags flagsOf;

    Bands(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.flagsOf = new BandFlags(jdbc);
    }

    /**
     * One page, by identity or, of bands that must come off, by that day.
     *
     * @param asked which bands
     * @param after the cursor of the page before, null for the first
     */
    public List<BandView> page(BandFilter asked, @Nullable String after, int limit) {
        JdbcClient.StatementSpec question = jdbc.sql(asked.sql(after)).param("limit", limit);
        for (Map.Entry<String, Object> value : asked.values(after).entrySet()) {
            question = question.param(value.getKey(), value.getValue());
        }
        return withFlags(question.query(Bands::row).list());
    }

    /** One band with everything that happened to it, empty if nobody told of it. */
    public Optional<BandView.Whole> whole(BandId bandId) {
        List<BandView> rows = jdbc.sql("SELECT * FROM band WHERE band_id = ?")
                .param(bandId.value())
                .query(Bands::row)
                .list();
        return withFlags(rows).stream().findFirst().map(band -> new BandView.Whole(band, steps(bandId)));
    }

    /** The bands that hang on these trees now, those of trees that turned out to be the same among them. */
    public Map<TreeId, List<BandId>> up(Collection<TreeId> trees) {
        Map<TreeId, List<BandId>> up = new HashMap<>();
        jdbc.sql("""
                        WITH asked AS (SELECT wanted, coalesce(merged_into, wanted) AS trunk
                                       FROM unnest(?::text[]) AS t (wanted) LEFT JOIN tree ON tree_id = wanted)
                        SELECT wanted, band_id
                        FROM (SELECT wanted, wanted AS tree_id FROM asked
                              UNION SELECT wanted, trunk FROM asked
                              UNION SELECT wanted, tree.tree_id FROM asked JOIN tree ON merged_into = trunk) AS member
                        JOIN band ON band.tree_id = member.tree_id
                        WHERE state = 'up' ORDER BY band_id""")
                .param(trees.stream().map(TreeId::value).distinct().toArray(String[]::new))
                .query((ResultSet row) -> {
                    up.computeIfAbsent(new TreeId(row.getString(1)), tree -> new ArrayList<>())
                            .add(new BandId(row.getString(2)));
                });
        return up;
    }

    /** When these bands were fitted last, of those that were. */
    public Map<BandId, Instant> fitted(Collection<BandId> bands) {
        Map<BandId, Instant> fitted = new HashMap<>();
        jdbc.sql("SELECT band_id, fitted_at FROM band WHERE band_id = ANY (?) AND fitted_at IS NOT NULL")
                .param(bands.stream().map(BandId::value).distinct().toArray(String[]::new))
                .query((ResultSet row) -> {
                    fitted.put(
                            new BandId(row.getString(1)),
                            row.getObject(2, OffsetDateTime.class).toInstant());
                });
        return fitted;
    }

    private List<BandView.Step> steps(BandId bandId) {
        return jdbc.sql("SELECT * FROM band_step WHERE band_id = ? ORDER BY happened_at DESC, position DESC")
                .param(bandId.value())
                .query((row, number) -> new BandView.Step(
                        row.getString("what"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                        row.getString("by_person"),
                        row.getString("note")))
                .list();
    }

    private List<BandView> withFlags(List<BandView> rows) {
        Map<String, List<BandView.Flag>> flags =
                flagsOf.of(rows.stream().map(BandView::bandId).toList());
        return rows.stream()
                .map(band -> band.with(flags.getOrDefault(band.bandId(), List.of())))
                .toList();
    }

    private static BandView row(ResultSet row, int number) throws SQLException {
        return new BandView(
                row.getString("band_id"),
                row.getString("tree_id"),
                row.getString("site_id"),
                row.getString("state"),
                moment(row, "fitted_at"),
                moment(row, "taken_down_at"),
                row.getString("crew_id"),
                row.getString("person_id"),
                row.getString("tape_reel"),
                row.getObject("tape_mm", Long.class),
                row.getString("mesh_reel"),
                row.getObject("mesh_mm", Long.class),
                row.getString("fastener_batch"),
                row.getObject("pieces", Long.class),
                row.getObject("girth_mm", Long.class),
                row.getObject("height_mm", Long.class),
                row.getObject("must_remove_by", LocalDate.class),
                row.getObject("policy_version", Integer.class),
                row.getString("device") == null ? null : FitDetailsColumns.shown(row),
                List.of());
    }

    private static @Nullable Instant moment(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }
}
