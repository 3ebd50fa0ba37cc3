package org.bandtrail.siteinstalls.imports;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps previews and their ready rows exactly as shown. */
@Repository
class KeptPreviews {
    /** Rows of a page. */
    static final int PAGE = 5_000;

    private final JdbcClient jdbc;

    KeptPreviews(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Keeps a preview in place of an earlier one of the same file and mapping. */
    void keep(String importId, Preview preview, PersonId by, Instant now) {
        jdbc.sql("DELETE FROM tree_import WHERE import_id = ?").param(importId).update();
        jdbc.sql("""
                        INSERT INTO tree_import (import_id, previewed_by, previewed_at, row_count, selected, ready)
                        VALUES (?, ?, ?, ?, ?, ?)""")
                .params(
                        importId,
                        by.value(),
                        now.atOffset(ZoneOffset.UTC),
                        preview.rowCount(),
                        preview.selected(),
                        preview.ready().size())
                .update();
        for (int start = 0; start < preview.ready().size(); start += PAGE) {
            int end = Math.min(start + PAGE, preview.ready().size());
            insert(importId, preview.ready().subList(start, end));
        }
    }

    private void insert(String importId, List<ReadyTree> rows) {
        jdbc.sql("""
                        INSERT INTO tree_import_row (import_id, row, tree_id, site_id, tag, species, girth_text,
                                                     girth_basis, measured_on, species_code, latitude_e7,
                                                     longitude_e7, girth_height_mm, note)
                        SELECT ?, * FROM unnest(?::integer[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
                                                ?::text[], ?::date[], ?::text[], ?::integer[], ?::integer[],
                                                ?::bigint[], ?::text[])""")
                .params(
                        importId,
                        rows.stream().map(ReadyTree::row).toArray(Integer[]::new),
                        texts(rows, row -> row.treeId().value()),
                        texts(rows, row -> row.siteId().value()),
                        texts(rows, ReadyTree::tag),
                        texts(rows, ReadyTree::species),
                        texts(rows, row -> row.girth().text()),
                        texts(rows, row -> row.girth().basis().name()),
                        texts(
                                rows,
                                row -> row.measured() == null
                                        ? null
                                        : row.measured().toString()),
                        texts(rows, row -> KeptRows.code(row.more())),
                        rows.stream().map(row -> KeptRows.latitude(row.more())).toArray(Integer[]::new),
                        rows.stream().map(row -> KeptRows.longitude(row.more())).toArray(Integer[]::new),
                        rows.stream().map(row -> KeptRows.height(row.more())).toArray(Long[]::new),
                        texts(rows, row -> row.more().note()))
                .update();
    }

    /** A preview with how far storing is, empty if none is kept. */
    Optional<KeptPreview> one(String importId) {
        return jdbc.sql("SELECT * FROM tree_import WHERE import_id = ?")
                .param(importId)
                .query(KeptPreviews::preview)
                .optional();
    }

    /** As {@link #one}, and nobody else can store it until the transaction ends. */
    Optional<KeptPreview> locked(String importId) {
        jdbc.sql("SELECT 1 FROM tree_import WHERE import_id = ? FOR UPDATE")
                .param(importId)
                .query(Integer.class)
                .optional();
        return one(importId);
    }

    /** The next rows after a row, in the order of the file. */
    List<ReadyTree> rowsAfter(String importId, int row) {
        return jdbc.sql("SELECT * FROM tree_import_row WHERE import_id = ? AND row > ? ORDER BY row LIMIT ?")
                .params(importId, row, PAGE)
                .query(KeptRows::row)
                .list();
    }

    /** Notes that somebody said it is to be stored. */
    void begin(String importId, PersonId by, Instant now) {
        jdbc.sql("UPDATE tree_import SET storing_by = ?, storing_at = ? WHERE import_id = ?")
                .params(by.value(), now.atOffset(ZoneOffset.UTC), importId)
                .update();
    }

    /**
     * Where the storing of an import is.
     *
     * @param by who said it is to be stored
     * @param doneRow the last row that was dealt with
     */
    record Begun(PersonId by, int doneRow) {}

    /** Where the storing of an import is that was begun. */
    Begun begun(String importId) {
        return jdbc.sql("SELECT storing_by, done_row FROM tree_import WHERE import_id = ?")
                .param(importId)
                .query((row, number) -> new Begun(new PersonId(row.getString(1)), row.getInt(2)))
                .single();
    }

    /** The import begun first of those not finished, locked until the transaction ends; one that others hold is not. */
    Optional<String> unfinished() {
        return jdbc.sql("""
                        SELECT import_id FROM tree_import WHERE storing_at IS NOT NULL AND stored IS NULL
                        ORDER BY storing_at, import_id LIMIT 1 FOR UPDATE SKIP LOCKED""").query(String.class).optional();
    }

    /** Notes that a page was dealt with; the last page, which is not full, ends the import. */
    void advance(String importId, List<ReadyTree> page, List<TreeId> leftOut) {
        jdbc.sql("""
                        UPDATE tree_import SET done = done + :stored, done_row = greatest(done_row, :row),
                            left_out = left_out || CAST(:leftOut AS text[]),
                            stored = CASE WHEN :last THEN done + :stored END
                        WHERE import_id = :importId""")
                .param("stored", page.size() - leftOut.size())
                .param("row", page.isEmpty() ? 0 : page.getLast().row())
                .param("leftOut", leftOut.stream().map(TreeId::value).toArray(String[]::new))
                .param("last", page.size() < PAGE)
                .param("importId", importId)
                .update();
    }

    private static KeptPreview preview(ResultSet row, int number) throws SQLException {
        boolean begun = row.getObject("storing_at") != null;
        return new KeptPreview(
                row.getString("import_id"),
                row.getInt("row_count"),
                row.getInt("selected"),
                row.getInt("ready"),
                row.getObject("stored", Integer.class),
                begun ? new KeptPreview.Progress(row.getInt("done"), row.getInt("ready")) : null,
                List.of((String[]) row.getArray("left_out").getArray()));
    }

    private static @Nullable String[] texts(List<ReadyTree> rows, Function<ReadyTree, @Nullable String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }
}
