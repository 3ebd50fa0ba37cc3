package org.bandtrail.siteinstalls.bands;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;

/**
 * The details of a fitting in the table of bands. Lists are kept as text in one column each, because rows are written
 * as sets of columns: photos separated by a blank, further material as {@code reel:R-7=120 batch:F-2=3}.
 */
final class FitDetailsColumns {
    private static final String REEL = "reel:";
    private static final String BATCH = "batch:";

    private FitDetailsColumns() {}

    /** The columns in the order of the statement. */
    static List<Object> of(List<BandRow> rows) {
        return List.of(
                rows.stream().map(text(FitDetails::device)).toArray(String[]::new),
                rows.stream()
                        .map(row -> row.fit() == null
                                ? null
                                : (Integer) row.fit().details().position())
                        .toArray(Integer[]::new),
                rows.stream().map(text(FitDetails::deviation)).toArray(String[]::new),
                rows.stream()
                        .map(text(details -> String.join(" ", details.photos())))
                        .toArray(String[]::new),
                rows.stream().map(FitDetailsColumns::seam).toArray(Long[]::new),
                rows.stream()
                        .map(row ->
                                row.fit() == null ? null : row.fit().details().guardClosedBelow())
                        .toArray(Boolean[]::new),
                rows.stream().map(text(FitDetails::programme)).toArray(String[]::new),
                rows.stream().map(text(FitDetails::pest)).toArray(String[]::new),
                rows.stream().map(text(FitDetailsColumns::alsoUsed)).toArray(String[]::new));
    }

    /** The details of a row that has a fitting. */
    static FitDetails details(ResultSet row) throws SQLException {
        List<Piece> cut = new ArrayList<>();
        List<Fasteners> counted = new ArrayList<>();
        for (String part : words(row.getString("also_used"))) {
            int mark = part.lastIndexOf('=');
            long quantity = Long.parseLong(part.substring(mark + 1));
            if (part.startsWith(REEL)) {
                cut.add(new Piece(new ReelId(part.substring(REEL.length(), mark)), Length.ofMm(quantity)));
            } else {
                counted.add(new Fasteners(new BatchId(part.substring(BATCH.length(), mark)), Pieces.of(quantity)));
            }
        }
        Long seam = row.getObject("seam_mm", Long.class);
        return new FitDetails(
                row.getString("device"),
                row.getInt("trunk_position"),
                row.getString("deviation"),
                words(row.getString("photos")),
                seam == null ? null : Length.ofMm(seam),
                row.getObject("guard_closed_below", Boolean.class),
                row.getString("programme"),
                row.getString("pest"),
                cut,
                counted);
    }

    /** The same for people, with the further parts as they are written in the row. */
    static BandView.Details shown(ResultSet row) throws SQLException {
        return new BandView.Details(
                row.getString("device"),
                row.getInt("trunk_position"),
                row.getString("deviation"),
                words(row.getString("photos")),
                row.getObject("seam_mm", Long.class),
                row.getObject("guard_closed_below", Boolean.class),
                row.getString("programme"),
                row.getString("pest"),
                words(row.getString("also_used")));
    }

    private static String alsoUsed(FitDetails details) {
        List<String> parts = new ArrayList<>();
        details.alsoCut()
                .forEach(piece ->
                        parts.add(REEL + piece.reelId() + "=" + piece.length().mm()));
        details.alsoCounted()
                .forEach(used ->
                        parts.add(BATCH + used.batchId() + "=" + used.pieces().count()));
        return String.join(" ", parts);
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.split(" "));
    }

    private static @Nullable Long seam(BandRow row) {
        Length seam = row.fit() == null ? null : row.fit().details().seam();
        return seam == null ? null : (Long) seam.mm();
    }

    private static Function<BandRow, @Nullable String> text(Function<FitDetails, @Nullable String> value) {
        return row -> row.fit() == null ? null : value.apply(row.fit().details());
    }
}
