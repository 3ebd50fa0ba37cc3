package org.bandtrail.siteinstalls.photos;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All stored pictures and what they show. */
@Repository
public class Photos {
    // Each picture being decoded holds some 40 MB; more at once than this would only press on the memory.
    private static final Semaphore DECODING = new Semaphore(2);
    private final JdbcClient jdbc;

    Photos(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Stores a picture and notes what it shows. The same picture again is stored once; inside a work it commits with
     * it.
     *
     * @param of what kind of thing it shows
     * @param subjectId identity of the tree, the band or the site
     * @param file JPEG or PNG as it came in, at most 8 MB
     * @param by who sent it
     * @param when when it came in
     * @throws PhotoRefused if it is too large, no JPEG or PNG, or damaged
     */
    public PhotoId attach(PhotoOf of, String subjectId, byte[] file, PersonId by, Instant when) {
        Picture picture = read(file);
        PhotoId photo = PhotoId.of(picture.jpeg());
        jdbc.sql("""
                        INSERT INTO photo (photo_id, jpeg, width, height, stored_at, stored_by)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(photo.value(), picture.jpeg(), picture.width(), picture.height(), utc(when), by.value())
                .update();
        jdbc.sql("""
                        INSERT INTO photo_use (photo_id, shows, subject_id, attached_at, attached_by)
                        VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(photo.value(), of.word(), subjectId, utc(when), by.value())
                .update();
        return photo;
    }

    private static Picture read(byte[] file) {
        DECODING.acquireUninterruptibly();
        try {
            return Picture.of(file);
        } finally {
            DECODING.release();
        }
    }

    /** The JPEG, empty if there is none or it was erased. */
    public Optional<byte[]> jpeg(PhotoId photo) {
        return jdbc.sql("SELECT jpeg FROM photo WHERE photo_id = ? AND jpeg IS NOT NULL")
                .param(photo.value())
                .query((row, number) -> row.getBytes(1))
                .optional();
    }

    /** The photos of one thing, the latest first. */
    public List<PhotoView> of(PhotoOf of, String subjectId) {
        return jdbc.sql("""
                        SELECT photo_id, width, height, attached_at, attached_by, erased_at, erased_why
                        FROM photo_use JOIN photo USING (photo_id)
                        WHERE shows = ? AND subject_id = ? ORDER BY attached_at DESC, photo_id""").params(of.word(), subjectId).query(Photos::row).list();
    }

    /**
     * Erases a picture; that there was one, who erased it and why stays.
     *
     * @return whether there was such a picture
     */
    public boolean erase(PhotoId photo, String why, PersonId by, Instant when) {
        return jdbc.sql("""
                                UPDATE photo SET jpeg = NULL, erased_at = ?, erased_by = ?, erased_why = ?
                                WHERE photo_id = ? AND jpeg IS NOT NULL""").params(utc(when), by.value(), why, photo.value()).update() > 0;
    }

    private static PhotoView row(ResultSet row, int number) throws SQLException {
        return new PhotoView(
                row.getString("photo_id"),
                row.getInt("width"),
                row.getInt("height"),
                row.getObject("attached_at", OffsetDateTime.class).toInstant(),
                row.getString("attached_by"),
                momentOrNull(row),
                row.getString("erased_why"));
    }

    private static @Nullable Instant momentOrNull(ResultSet row) throws SQLException {
        OffsetDateTime moment = row.getObject("erased_at", OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    private static OffsetDateTime utc(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }
}
