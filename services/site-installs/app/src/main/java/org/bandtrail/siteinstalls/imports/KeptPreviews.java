package org.bandtrail.siteinstalls.imports;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Keeps previews and their ready rows exactly as shown. */
@Repository
class KeptPreviews {
    private static final int PAGE = 5_000;
    private final JdbcClient jdbc;
    private final TransactionTemplate beside;

    KeptPreviews(JdbcClient jdbc, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.beside = new TransactionTemplate(transactions);
        this.beside.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
    }

    /** Keeps a preview in place of an earlier one of the same file and mapping. */
    void keep(String importId, Preview preview, PersonId by, Instant now) {
        jdbc.sql("DELETE FROM tree_import_progress WHERE import_id = ?")
                .param(importId)
                .update();
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
        return jdbc.sql("""
                        SELECT tree_import.*, done, total
                        FROM tree_import LEFT JOIN tree_import_progress USING (import_id)
                        WHERE import_id = ?""").param(importId).query(KeptPreviews::preview).optional();
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

    /** Shows how far storing is, in a transaction of its own so that others see it at once. */
    void showProgress(String importId, int done, int total, Instant now) {
        beside.executeWithoutResult(status -> jdbc.sql("""
                        INSERT INTO tree_import_progress (import_id, done, total, seen_at) VALUES (?, ?, ?, ?)
                        ON CONFLICT (import_id) DO UPDATE SET done = excluded.done, total = excluded.total,
                            seen_at = excluded.seen_at""")
                .params(importId, done, total, now.atOffset(ZoneOffset.UTC))
                .update());
    }

    /** Notes that it was stored. */
    void markStored(String importId, int stored) {
        jdbc.sql("UPDATE tree_import SET stored = ? WHERE import_id = ?")
                .params(stored, importId)
                .update();
    }

    private static KeptPreview preview(ResultSet row, int number) throws SQLException {
        Integer total = row.getObject("total", Integer.class);
        return new KeptPreview(
                row.getString("import_id"),
                row.getInt("row_count"),
                row.getInt("selected"),
                row.getInt("ready"),
                row.getObject("stored", Integer.class),
                total == null ? null : new KeptPreview.Progress(row.getInt("done"), total));
    }

    private static @Nullable String[] texts(List<ReadyTree> rows, Function<ReadyTree, @Nullable String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }
}
