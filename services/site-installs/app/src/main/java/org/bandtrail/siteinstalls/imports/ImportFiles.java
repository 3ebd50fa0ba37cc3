package org.bandtrail.siteinstalls.imports;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.bandtrail.kernel.PersonId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps uploaded files for a day, while somebody says what their columns mean. */
@Repository
class ImportFiles {
    private static final Duration KEPT = Duration.ofDays(1);
    private final JdbcClient jdbc;

    ImportFiles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Keeps a file under its identity and forgets those of yesterday. */
    void keep(String fileId, byte[] bytes, PersonId by, Instant now) {
        jdbc.sql("DELETE FROM tree_import_file WHERE uploaded_at < ?")
                .param(now.minus(KEPT).atOffset(ZoneOffset.UTC))
                .update();
        jdbc.sql("""
                        INSERT INTO tree_import_file (file_id, content, uploaded_by, uploaded_at) VALUES (?, ?, ?, ?)
                        ON CONFLICT (file_id) DO UPDATE SET uploaded_at = excluded.uploaded_at""")
                .params(fileId, bytes, by.value(), now.atOffset(ZoneOffset.UTC))
                .update();
    }

    /**
     * The bytes of a file.
     *
     * @throws ImportRefused.Unknown if it was never there or was forgotten
     */
    byte[] content(String fileId) {
        return jdbc.sql("SELECT content FROM tree_import_file WHERE file_id = ?")
                .param(fileId)
                .query((row, number) -> row.getBytes(1))
                .optional()
                .orElseThrow(() -> new ImportRefused.Unknown(fileId));
    }
}
