package org.bandtrail.siteinstalls.imports;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/** How a ready row is written into the columns of {@code tree_import_row} and read from them. */
final class KeptRows {
    private KeptRows() {}

    static @Nullable String code(ReadyTree.More more) {
        return more.speciesCode() == null ? null : more.speciesCode().value();
    }

    static @Nullable Integer latitude(ReadyTree.More more) {
        return more.position() == null ? null : more.position().latitudeE7();
    }

    static @Nullable Integer longitude(ReadyTree.More more) {
        return more.position() == null ? null : more.position().longitudeE7();
    }

    static @Nullable Long height(ReadyTree.More more) {
        return more.girthHeight() == null ? null : more.girthHeight().mm();
    }

    static ReadyTree row(ResultSet row, int number) throws SQLException {
        return new ReadyTree(
                row.getInt("row"),
                new TreeId(row.getString("tree_id")),
                new SiteId(row.getString("site_id")),
                row.getString("tag"),
                row.getString("species"),
                new WrittenGirth(row.getString("girth_text"), GirthBasis.valueOf(row.getString("girth_basis"))),
                row.getObject("measured_on", LocalDate.class),
                more(row));
    }

    private static ReadyTree.More more(ResultSet row) throws SQLException {
        String code = row.getString("species_code");
        Integer latitude = row.getObject("latitude_e7", Integer.class);
        Long height = row.getObject("girth_height_mm", Long.class);
        return new ReadyTree.More(
                code == null ? null : new EppoCode(code),
                latitude == null ? null : new Point(latitude, row.getInt("longitude_e7")),
                height == null ? null : Length.ofMm(height),
                row.getString("note"));
    }
}
