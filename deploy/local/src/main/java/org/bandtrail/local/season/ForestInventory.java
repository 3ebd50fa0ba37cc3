package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/**
 * The open forest inventory, read here a second time and apart from the import, so that what the services made of it
 * can be checked against the file itself. Girth is pi times the diameter at breast height, to the nearest millimetre.
 */
final class ForestInventory {
    static final String TAG = "Tree_ID";
    static final String DIAMETER_CM = "DBH_2026";
    static final String STATUS = "Status_2026";
    static final String LIVING = "LI";

    private ForestInventory() {}

    /** Girth in millimetres by tag, of every tree that was alive in 2026 and has a diameter. */
    static Map<String, Long> livingGirths(Path file) throws IOException {
        Map<String, Long> girths = new TreeMap<>();
        for (Row row : CsvRows.read(file)) {
            String diameter = row.text(DIAMETER_CM);
            if (row.text(STATUS).equals(LIVING) && !diameter.isEmpty() && !diameter.equals("NA")) {
                girths.put(row.text(TAG), Math.round(Math.PI * Double.parseDouble(diameter) * 10));
            }
        }
        return girths;
    }
}
