package org.bandtrail.siteinstalls.imports;

import java.time.LocalDate;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/**
 * A row that can be stored as it is.
 *
 * @param row as a spreadsheet numbers it
 * @param treeId made of site and tag
 * @param siteId a registered site
 * @param tag as written
 * @param species as written, empty if none
 * @param girth as written
 * @param measured the date of measuring, null if the file does not tell
 * @param more what lists may tell or not
 */
public record ReadyTree(
        int row,
        TreeId treeId,
        SiteId siteId,
        String tag,
        String species,
        WrittenGirth girth,
        @Nullable LocalDate measured,
        More more) {
    /**
     * What lists may tell or not.
     *
     * @param speciesCode of the EPPO list, null if not told
     * @param position where the tree stands, null if not told
     * @param girthHeight of measuring above ground, null if not told
     * @param note what else was said, empty if nothing
     */
    public record More(
            @Nullable EppoCode speciesCode,
            @Nullable Point position,
            @Nullable Length girthHeight,
            String note) {}
}
