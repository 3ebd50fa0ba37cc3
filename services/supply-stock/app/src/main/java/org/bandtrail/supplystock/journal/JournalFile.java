package org.bandtrail.supplystock.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/**
 * A journal as CSV (RFC 4180, UTF-8) or XLSX (ECMA-376). Both are the same to the byte for the same journal. A name that
 * a spreadsheet would run as a formula gets an apostrophe in front in CSV, see OWASP, CSV Injection; in XLSX text is
 * text.
 */
final class JournalFile {
    private static final List<String> HEADERS =
            List.of("month", "line", "what", "account", "account_name", "our_account", "currency", "debit", "credit");
    private static final Pattern RUNS = Pattern.compile("^\\s*[=+\\-@\\t\\r\\n].*", Pattern.DOTALL);

    private JournalFile() {}

    static byte[] csv(Journal journal) {
        StringBuilder text = new StringBuilder(String.join(",", HEADERS)).append("\r\n");
        for (Journal.Line line : journal.lines()) {
            text.append(journal.month()).append(',').append(line.number()).append(',');
            for (@Nullable
            String cell : new @Nullable String[] {line.what(), line.account(), line.accountName(), line.ours()}) {
                text.append(quoted(cell)).append(',');
            }
            text.append(line.currency()).append(',');
            text.append(line.debit().toPlainString()).append(',');
            text.append(line.credit().toPlainString()).append("\r\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(@Nullable String cell) {
        String text = cell == null ? "" : cell;
        if (RUNS.matcher(text).matches()) {
            text = "'" + text;
        }
        return text.matches("[^\",\\r\\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    static byte[] xlsx(Journal journal) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Bandtrail", "1.0")) {
            Worksheet sheet = book.newWorksheet("Journal " + journal.month());
            for (int column = 0; column < HEADERS.size(); column++) {
                sheet.value(0, column, HEADERS.get(column));
                sheet.style(0, column).bold().set();
                sheet.width(column, column == 4 ? 36 : 14);
            }
            sheet.freezePane(0, 1);
            for (int row = 0; row < journal.lines().size(); row++) {
                line(sheet, row + 1, journal.month().toString(), journal.lines().get(row));
            }
            sheet.finish();
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return SteadyZip.of(out.toByteArray());
    }

    private static void line(Worksheet sheet, int row, String month, Journal.Line line) {
        sheet.value(row, 0, month);
        sheet.value(row, 1, line.number());
        sheet.value(row, 2, line.what());
        sheet.value(row, 3, line.account());
        sheet.value(row, 4, line.accountName());
        sheet.value(row, 5, line.ours());
        sheet.value(row, 6, line.currency());
        amount(sheet, row, 7, line.debit());
        amount(sheet, row, 8, line.credit());
    }

    private static void amount(Worksheet sheet, int row, int column, BigDecimal amount) {
        sheet.value(row, column, amount);
        sheet.style(row, column)
                .format(amount.scale() == 0 ? "#,##0" : "#,##0." + "0".repeat(amount.scale()))
                .set();
    }
}
