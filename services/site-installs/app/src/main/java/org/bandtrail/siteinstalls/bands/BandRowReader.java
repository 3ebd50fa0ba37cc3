package org.bandtrail.siteinstalls.bands;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** Reads a row of the table of bands back into what it was written from. */
final class BandRowReader {
    private BandRowReader() {}

    static BandRow row(ResultSet row) throws SQLException {
        Band band = new Band(
                new BandId(row.getString("band_id")),
                moment(row, "fitted_at"),
                moment(row, "taken_down_at"),
                hung(row, "tape"),
                hung(row, "mesh"));
        String tree = row.getString("tree_id");
        String site = row.getString("site_id");
        return new BandRow(
                band,
                tree == null ? null : new TreeId(tree),
                site == null ? null : new SiteId(site),
                fit(row),
                pins(row));
    }

    private static Band.@Nullable Hung hung(ResultSet row, String what) throws SQLException {
        Instant since = moment(row, what + "_since");
        String reel = row.getString(what + "_reel");
        Piece piece = reel == null ? null : new Piece(new ReelId(reel), Length.ofMm(row.getLong(what + "_mm")));
        return since == null ? null : new Band.Hung(piece, since);
    }

    private static BandRow.@Nullable Fit fit(ResultSet row) throws SQLException {
        String crew = row.getString("crew_id");
        return crew == null
                ? null
                : new BandRow.Fit(
                        crew,
                        row.getString("person_id"),
                        Length.ofMm(row.getLong("girth_mm")),
                        Length.ofMm(row.getLong("height_mm")),
                        row.getObject("must_remove_by", LocalDate.class),
                        row.getInt("policy_version"),
                        FitDetailsColumns.details(row));
    }

    private static BandRow.@Nullable Pins pins(ResultSet row) throws SQLException {
        Instant since = moment(row, "pieces_since");
        String batch = row.getString("fastener_batch");
        Fasteners fasteners =
                batch == null ? null : new Fasteners(new BatchId(batch), Pieces.of(row.getLong("pieces")));
        return since == null ? null : new BandRow.Pins(fasteners, since);
    }

    private static @Nullable Instant moment(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }
}
