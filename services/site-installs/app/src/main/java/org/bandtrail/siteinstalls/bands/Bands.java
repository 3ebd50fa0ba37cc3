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

    Bands(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page by identity.
     *
     * @param site only this site, null for all
     * @param state up or down, null for both
     * @param text part of band, tree, person or reel, null for all
     * @param after last identity of the page before, null for the first
     */
    public List<BandView> page(
            @Nullable String site, @Nullable String state, @Nullable String text, @Nullable String after, int limit) {
        List<BandView> rows = jdbc.sql("""
                        SELECT * FROM band
                        WHERE band_id > :after
                          AND (CAST(:site AS text) IS NULL OR site_id = :site)
                          AND (CAST(:state AS text) IS NULL OR state = :state)
                          AND (CAST(:like AS text) IS NULL OR band_id ILIKE :like OR tree_id ILIKE :like
                               OR person_id ILIKE :like OR tape_reel ILIKE :like OR mesh_reel ILIKE :like)
                        ORDER BY band_id LIMIT :limit""")
                .param("after", after == null ? "" : after)
                .param("site", site)
                .param("state", state)
                .param("like", text == null ? null : "%" + text.replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("limit", limit)
                .query(Bands::row)
                .list();
        return withFlags(rows);
    }

    /** One band with everything that happened to it, empty if nobody told of it. */
    public Optional<BandView.Whole> whole(BandId bandId) {
        List<BandView> rows = jdbc.sql("SELECT * FROM band WHERE band_id = ?")
                .param(bandId.value())
                .query(Bands::row)
                .list();
        return withFlags(rows).stream().findFirst().map(band -> new BandView.Whole(band, steps(bandId)));
    }

    /** The bands that hang on these trees now. */
    public Map<TreeId, List<BandId>> up(Collection<TreeId> trees) {
        Map<TreeId, List<BandId>> up = new HashMap<>();
        jdbc.sql("SELECT tree_id, band_id FROM band WHERE tree_id = ANY (?) AND state = 'up' ORDER BY band_id")
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
        Map<String, List<BandView.Flag>> flags = new HashMap<>();
        jdbc.sql("""
                        SELECT band_id, flag, field, message FROM band_flag WHERE band_id = ANY (?)
                        ORDER BY position, ordinal""")
                .param(rows.stream().map(BandView::bandId).toArray(String[]::new))
                .query((ResultSet row) -> {
                    flags.computeIfAbsent(row.getString(1), band -> new ArrayList<>())
                            .add(new BandView.Flag(row.getString(2), row.getString(3), row.getString(4)));
                });
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
                List.of());
    }

    private static @Nullable Instant moment(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }
}
