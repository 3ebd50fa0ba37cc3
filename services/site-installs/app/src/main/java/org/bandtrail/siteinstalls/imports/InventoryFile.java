package org.bandtrail.siteinstalls.imports;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Iterator;
import java.util.List;

/**
 * A CSV file (RFC 4180: quoted fields may hold separators, quotes and line ends), row by row, so that 200,000 rows need
 * no more memory than their text.
 */
final class InventoryFile {
    /** What a file may have at most; a register of one programme is far below. */
    static final int MOST_ROWS = 500_000;

    private final List<String> columns;
    private final Iterator<CsvRecord> records;
    private int row = 1;

    private InventoryFile(List<String> columns, Iterator<CsvRecord> records) {
        this.columns = columns;
        this.records = records;
    }

    /**
     * One row.
     *
     * @param number as a spreadsheet numbers it, the header is 1
     * @param fields as written
     */
    record Row(int number, List<String> fields) {
        boolean blank() {
            return fields.stream().allMatch(String::isBlank);
        }
    }

    /**
     * Opens a file and reads its header.
     *
     * @throws ImportRefused.FileUnreadable if there is no header
     */
    static InventoryFile open(InventoryText file) {
        Iterator<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(file.separator())
                .skipEmptyLines(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(file.text())
                .iterator();
        InventoryFile opened = new InventoryFile(List.of(), records);
        if (!opened.more()) {
            throw new ImportRefused.FileUnreadable(1, "it is empty");
        }
        List<String> columns =
                opened.record().getFields().stream().map(String::strip).toList();
        if (columns.stream().allMatch(String::isEmpty)) {
            throw new ImportRefused.FileUnreadable(1, "its first row has no column names");
        }
        return new InventoryFile(columns, records);
    }

    /** The names of the columns, without surrounding blanks. */
    List<String> columns() {
        return columns;
    }

    /** Whether there is a further row. */
    boolean more() {
        try {
            return records.hasNext();
        } catch (CsvParseException broken) {
            throw unreadable(broken);
        }
    }

    /**
     * The next row.
     *
     * @throws ImportRefused.FileUnreadable if the quotes are broken or there are too many rows
     */
    Row next() {
        row++;
        if (row > MOST_ROWS) {
            throw new ImportRefused.FileUnreadable(row, "it has more than %d rows".formatted(MOST_ROWS));
        }
        return new Row(row, record().getFields());
    }

    private CsvRecord record() {
        try {
            return records.next();
        } catch (CsvParseException broken) {
            throw unreadable(broken);
        }
    }

    private ImportRefused.FileUnreadable unreadable(CsvParseException broken) {
        return new ImportRefused.FileUnreadable(row + 1, "its quotes are broken: " + broken.getMessage());
    }
}
