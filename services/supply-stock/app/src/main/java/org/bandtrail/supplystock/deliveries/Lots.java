package org.bandtrail.supplystock.deliveries;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Lot and expiry of every delivered reel and batch. A reel and a batch may bear the same identity, so each question
 * names which of the two: {@code reel} or {@code batch}.
 */
@Repository
public class Lots {
    private final JdbcClient jdbc;

    Lots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What the label says of one reel or batch, empty if it came without a recorded delivery. */
    public Optional<LotRow> one(String holding, String id) {
        return jdbc.sql("SELECT * FROM delivered_holding WHERE holding = ? AND id = ?")
                .params(holding, id)
                .query(Lots::row)
                .optional();
    }

    /** The maker's lot of a reel or batch, empty if none is known. */
    public Optional<String> lot(String holding, String id) {
        return one(holding, id).map(LotRow::lot);
    }

    /** The last day the adhesive is good for, empty if none is known. */
    public Optional<LocalDate> expiry(String holding, String id) {
        return one(holding, id).map(LotRow::expiresOn);
    }

    /**
     * One page of the reels and batches of a lot, batches first, by identity.
     *
     * @param lot in any case
     * @param after {@code holding/id} of the last row of the page before, null for the first page
     */
    public List<LotRow> ofLot(String lot, @Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT * FROM delivered_holding
                        WHERE lot = :lot
                          AND (:after::varchar IS NULL OR (holding || '/' || id) COLLATE "C" > :after)
                        ORDER BY (holding || '/' || id) COLLATE "C" LIMIT :limit""")
                .param("lot", spelt(lot))
                .param("after", after)
                .param("limit", limit)
                .query(Lots::row)
                .list();
    }

    /** A lot as it is kept: upper case, one blank between words. */
    public static String spelt(String lot) {
        return lot.strip().replaceAll("\\s+", " ").toUpperCase(Locale.ROOT);
    }

    static LotRow row(ResultSet row, int number) throws SQLException {
        return new LotRow(
                row.getString("holding"),
                row.getString("id"),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("quantity"),
                row.getObject("width_mm", Long.class),
                row.getString("lot"),
                row.getObject("expires_on", LocalDate.class),
                row.getString("condition"),
                row.getString("state"),
                row.getString("supplier_id"),
                row.getString("purchase_id"),
                row.getString("delivery_id"),
                row.getObject("delivered_on", LocalDate.class));
    }
}
