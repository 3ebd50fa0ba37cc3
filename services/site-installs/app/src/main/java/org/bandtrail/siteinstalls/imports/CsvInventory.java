package org.bandtrail.siteinstalls.imports;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A CSV file (RFC 4180: quoted fields may hold separators, quotes and line ends). */
final class CsvInventory implements InventoryFile {
    private final List<String> columns;
    private final @Nullable String note;
    private final Iterator<CsvRecord> records;
    private int row = 1;

    private CsvInventory(List<String> columns, @Nullable String note, Iterator<CsvRecord> records) {
        this.columns = columns;
        this.note = note;
        this.records = records;
    }

    /**
     * Opens a file and reads its header.
     *
     * @throws ImportRefused.FileUnreadable if there is no header
     */
    static CsvInventory open(InventoryText file) {
        Iterator<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(file.separator())
                .skipEmptyLines(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(file.text())
                .iterator();
        CsvInventory opened = new CsvInventory(List.of(), null, records);
        if (!opened.more()) {
            throw new ImportRefused.FileUnreadable(1, "it is empty");
        }
        List<String> columns = InventoryFile.named(opened.record().getFields());
        return new CsvInventory(columns, file.note(), records);
    }

    @Override
    public List<String> columns() {
        return columns;
    }

    @Override
    public List<String> notes() {
        return note == null ? List.of() : List.of(note);
    }

    @Override
    public boolean more() {
        try {
            return records.hasNext();
        } catch (CsvParseException broken) {
            throw unreadable(broken);
        }
    }

    @Override
    public Row next() {
        row = InventoryFile.counted(row + 1);
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
