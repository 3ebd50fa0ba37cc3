package org.bandtrail.siteinstalls.imports;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.jspecify.annotations.Nullable;

/**
 * The first sheet of a spreadsheet (XLSX, ECMA-376). Numbers are taken with the fifteen digits a spreadsheet keeps,
 * cells shown as a date as that date, formulas as the value they had when the file was saved.
 */
final class XlsxInventory implements InventoryFile {
    /** Unpacked, in bytes: 200,000 rows of a dozen columns take about 150 million. */
    private static final long MOST_UNPACKED = 1_000_000_000;

    private static final MathContext SHEET_DIGITS = new MathContext(15);
    private final List<String> columns;
    private final List<String> notes;
    private final Iterator<org.dhatim.fastexcel.reader.Row> rows;

    private XlsxInventory(List<String> columns, List<String> notes, Iterator<org.dhatim.fastexcel.reader.Row> rows) {
        this.columns = columns;
        this.notes = notes;
        this.rows = rows;
    }

    /** Whether the bytes begin as an archive does. */
    static boolean looksLikeOne(byte[] file) {
        return file.length > 4 && file[0] == 'P' && file[1] == 'K' && file[2] == 3 && file[3] == 4;
    }

    /**
     * Opens a file and reads the first row of its first sheet.
     *
     * @throws ImportRefused.FileUnreadable if it is no spreadsheet, has no header, or unpacks to far too much
     */
    static XlsxInventory open(byte[] file) {
        requireModest(file);
        try {
            // Closed by nobody on purpose: it reads from memory, and rows are read from it until the last.
            ReadableWorkbook book =
                    new ReadableWorkbook(new ByteArrayInputStream(file), new ReadingOptions(true, false));
            Iterator<org.dhatim.fastexcel.reader.Row> rows =
                    book.getFirstSheet().openStream().iterator();
            if (!rows.hasNext()) {
                throw new ImportRefused.FileUnreadable(1, "its first sheet is empty");
            }
            List<String> columns = InventoryFile.named(texts(rows.next(), 0));
            long sheets = book.getSheets().count();
            List<String> notes = sheets > 1
                    ? List.of("The file has %d sheets; the first one is read.".formatted(sheets))
                    : List.of();
            return new XlsxInventory(columns, notes, rows);
        } catch (IOException | ExcelReaderException broken) {
            throw new ImportRefused.FileUnreadable(1, "it is no spreadsheet: " + broken.getMessage());
        }
    }

    /** Counts what really comes out, because what an archive says of itself may be untrue. */
    private static void requireModest(byte[] file) {
        byte[] buffer = new byte[1 << 16];
        long unpacked = 0;
        try (ZipFile archive = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(file))
                .get()) {
            for (ZipArchiveEntry entry : Collections.list(archive.getEntries())) {
                InputStream content = archive.getInputStream(entry);
                for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
                    unpacked += read;
                    if (unpacked > MOST_UNPACKED) {
                        throw new ImportRefused.FileUnreadable(
                                1, "it unpacks to more than %d bytes".formatted(MOST_UNPACKED));
                    }
                }
            }
        } catch (IOException broken) {
            throw new ImportRefused.FileUnreadable(1, "its archive is broken: " + broken.getMessage());
        }
    }

    @Override
    public List<String> columns() {
        return columns;
    }

    @Override
    public List<String> notes() {
        return notes;
    }

    @Override
    public boolean more() {
        return rows.hasNext();
    }

    @Override
    public Row next() {
        try {
            org.dhatim.fastexcel.reader.Row row = rows.next();
            return new Row(InventoryFile.counted(row.getRowNum()), texts(row, columns.size()));
        } catch (ExcelReaderException broken) {
            throw new ImportRefused.FileUnreadable(1, "it is no spreadsheet: " + broken.getMessage());
        }
    }

    /** The cells as texts; rows that end early are filled up, because a sheet leaves empty cells out. */
    private static List<String> texts(org.dhatim.fastexcel.reader.Row row, int width) {
        List<String> texts = new ArrayList<>();
        for (int column = 0; column < Math.max(width, row.getCellCount()); column++) {
            texts.add(column < row.getCellCount() ? text(row.getCell(column)) : "");
        }
        while (texts.size() > width && texts.getLast().isBlank()) {
            texts.removeLast();
        }
        return texts;
    }

    private static String text(@Nullable Cell cell) {
        if (cell == null || cell.getType() == CellType.EMPTY) {
            return "";
        }
        String raw = cell.getRawValue();
        if (cell.getType() != CellType.NUMBER || raw == null) {
            return raw == null || cell.getType() == CellType.STRING ? cell.getText() : raw;
        }
        if (isDate(cell)) {
            return cell.asDate().toLocalDate().toString();
        }
        return new BigDecimal(raw).round(SHEET_DIGITS).stripTrailingZeros().toPlainString();
    }

    /** A format with years or days and without a placeholder for digits is a date. */
    private static boolean isDate(Cell cell) {
        String format = cell.getDataFormatString();
        return format != null && format.matches("(?i).*[yd].*") && !format.matches(".*[0#].*");
    }
}
