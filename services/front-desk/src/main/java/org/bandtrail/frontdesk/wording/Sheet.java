package org.bandtrail.frontdesk.wording;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;

/**
 * Rows as an XLSX workbook (ECMA-376): the header row bold and frozen, numbers as numbers, dates as dates, moments in
 * UTC and saying so. Text is always a text cell and no cell is ever a formula, so nothing in a list can run.
 */
final class Sheet {
    static final MediaType TYPE =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    /** Spreadsheets keep 15 significant digits of a number; a longer one is text, so that no digit is lost. */
    private static final long EXACT = 999_999_999_999_999L;

    /**
     * The most characters that spreadsheet programs read in one cell (common practice); longer text ends in an
     * ellipsis.
     */
    private static final int CELL = 32_767;

    /** Date, time and the letters UTC; letters are escaped one by one because quotes break the styles part. */
    private static final String MOMENT = "yyyy-mm-dd hh:mm:ss\\ \\U\\T\\C";

    private static final int ROWS_PER_FLUSH = 1000;

    private Sheet() {}

    static <T> byte[] of(String name, List<String> headers, List<T> rows, Function<T, List<@Nullable Object>> cells) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Bandtrail", "1.0")) {
            int perSheet = Worksheet.MAX_ROWS - 1;
            int number = 1;
            for (int from = 0; from == 0 || from < rows.size(); from += perSheet) {
                Worksheet sheet = book.newWorksheet(number == 1 ? name : name + " " + number);
                number++;
                head(sheet, headers);
                fill(sheet, rows.subList(from, Math.min(rows.size(), from + perSheet)), cells);
                sheet.finish();
            }
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return out.toByteArray();
    }

    private static void head(Worksheet sheet, List<String> headers) {
        for (int column = 0; column < headers.size(); column++) {
            sheet.value(0, column, headers.get(column));
            sheet.style(0, column).bold().set();
            sheet.width(column, Math.max(12, headers.get(column).length() + 2));
        }
        sheet.freezePane(0, 1);
    }

    private static <T> void fill(Worksheet sheet, List<T> rows, Function<T, List<@Nullable Object>> cells)
            throws IOException {
        for (int row = 0; row < rows.size(); row++) {
            List<@Nullable Object> values = cells.apply(rows.get(row));
            for (int column = 0; column < values.size(); column++) {
                put(sheet, row + 1, column, values.get(column));
            }
            if (row % ROWS_PER_FLUSH == ROWS_PER_FLUSH - 1) {
                sheet.flush();
            }
        }
    }

    private static void put(Worksheet sheet, int row, int column, @Nullable Object value) {
        switch (value) {
            case null -> {}
            case Long whole when Math.abs(whole) > EXACT -> sheet.value(row, column, Long.toString(whole));
            case BigDecimal exact when exact.precision() > 15 -> sheet.value(row, column, exact.toPlainString());
            case Number number -> sheet.value(row, column, number);
            case Boolean yes -> sheet.value(row, column, yes);
            case LocalDate day -> {
                sheet.value(row, column, day);
                sheet.style(row, column).format("yyyy-mm-dd").set();
            }
            case Instant moment -> {
                sheet.value(row, column, LocalDateTime.ofInstant(moment, ZoneOffset.UTC));
                sheet.style(row, column).format(MOMENT).set();
            }
            default -> {
                String text = value.toString();
                sheet.value(row, column, text.length() > CELL ? text.substring(0, CELL - 1) + "…" : text);
            }
        }
    }
}
