package org.bandtrail.siteinstalls.imports;

import java.util.List;

/** A table of trees in some file format, row by row, so that 200,000 rows need little more memory than the file. */
interface InventoryFile {
    /** What a file may have at most; a register of one programme is far below. */
    int MOST_ROWS = 500_000;

    /**
     * One row.
     *
     * @param number as a spreadsheet numbers it, the header is 1; in GeoJSON the first feature is 2
     * @param fields as written
     */
    record Row(int number, List<String> fields) {
        boolean blank() {
            return fields.stream().allMatch(String::isBlank);
        }
    }

    /** The names of the columns, without surrounding blanks. */
    List<String> columns();

    /** What is to be said of the file as a whole. */
    List<String> notes();

    /** Whether there is a further row. */
    boolean more();

    /**
     * The next row.
     *
     * @throws ImportRefused.FileUnreadable if the file is broken there or there are too many rows
     */
    Row next();

    /**
     * Opens a file by what its first bytes are, whatever its name says: a spreadsheet (XLSX) begins as an archive, a
     * GeoJSON text with a brace, everything else is taken as CSV.
     *
     * @throws ImportRefused.FileUnreadable if it is no table
     */
    static InventoryFile open(byte[] file) {
        if (XlsxInventory.looksLikeOne(file)) {
            return XlsxInventory.open(file);
        }
        InventoryText text = InventoryText.decode(file);
        return text.text().stripLeading().startsWith("{") ? GeoJsonInventory.open(text) : CsvInventory.open(text);
    }

    /** Refuses a row number beyond {@link #MOST_ROWS}. */
    static int counted(int row) {
        if (row > MOST_ROWS) {
            throw new ImportRefused.FileUnreadable(row, "it has more than %d rows".formatted(MOST_ROWS));
        }
        return row;
    }

    /** The column names of a header row. */
    static List<String> named(List<String> header) {
        List<String> columns = header.stream().map(String::strip).toList();
        if (columns.stream().allMatch(String::isEmpty)) {
            throw new ImportRefused.FileUnreadable(1, "its first row has no column names");
        }
        return columns;
    }
}
