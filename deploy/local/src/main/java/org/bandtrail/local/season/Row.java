package org.bandtrail.local.season;

import java.util.List;
import java.util.Map;

/**
 * One row of a file of the season.
 *
 * @param file the file's name without folder
 * @param line the line in the file, the header being 1
 * @param cells text by column
 */
record Row(String file, long line, Map<String, String> cells) {

    /** The cell of a column, empty if nothing is written there. */
    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException(
                    "%s has no column [%s]; it has %s.".formatted(file, column, cells.keySet()));
        }
        return cell.strip();
    }

    boolean has(String column) {
        return !text(column).isEmpty();
    }

    long number(String column) {
        return Long.parseLong(text(column));
    }

    /** The words of a cell that holds several, parted by blanks. */
    List<String> words(String column) {
        return has(column) ? List.of(text(column).split(" +")) : List.of();
    }

    /** Where this row stands, for messages. */
    String place() {
        return file + " row " + line;
    }
}
