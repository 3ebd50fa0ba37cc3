package org.bandtrail.siteinstalls.imports;

import java.time.LocalDate;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
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
 */
public record ReadyTree(
        int row,
        TreeId treeId,
        SiteId siteId,
        String tag,
        String species,
        WrittenGirth girth,
        @Nullable LocalDate measured) {}
