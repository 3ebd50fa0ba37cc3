package org.bandtrail.supplystock.invoicefiles;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A CSV file (RFC 4180) whose first line names the columns. Comma, semicolon and tab part the fields, whichever the
 * first line has most of; the text is UTF-8 or, if it is not that, Windows-1252.
 */
final class CsvSheet {
    private static final int ROWS_AT_MOST = 5_000;
    private final List<Row> rows = new ArrayList<>();

    /**
     * One line of the file.
     *
     * @param number 1 is the header
     */
    record Row(int number, Map<String, String> cells) {
        /** The text under a column without blanks around it, or null if there is none. */
        @Nullable
        String text(String column) {
            String text = cells.getOrDefault(column, "").strip();
            return text.isEmpty() ? null : text;
        }
    }

    /**
     * Reads a file.
     *
     * @param known the columns that mean something
     * @param needed those without which nothing can be read
     * @throws UnreadableInvoice naming columns that are unknown, doubled or missing
     */
    CsvSheet(byte[] bytes, Set<String> known, Set<String> needed) {
        String text = text(bytes);
        String first = text.lines().findFirst().orElse("");
        char separator = Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        sign -> first.chars().filter(c -> c == sign).count()))
                .orElse(',');
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)) {
            List<String> header = List.of();
            for (CsvRecord record : csv) {
                if (header.isEmpty()) {
                    header = header(record.getFields(), known, needed);
                } else {
                    add(record, header);
                }
            }
        } catch (CsvParseException broken) {
            throw new UnreadableInvoice("", "This is no CSV: " + broken.getMessage() + ".");
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }

    private static List<String> header(List<String> fields, Set<String> known, Set<String> needed) {
        List<String> header = fields.stream()
                .map(name -> name.strip().toLowerCase(Locale.ROOT).replace(' ', '_'))
                .toList();
        List<FileProblem> problems = new ArrayList<>();
        for (String name : header) {
            if (!known.contains(name)) {
                problems.add(new FileProblem(
                        1,
                        name,
                        "This column is not known. Known are %s."
                                .formatted(String.join(
                                        ", ", known.stream().sorted().toList()))));
            }
        }
        for (String name : needed.stream().sorted().toList()) {
            if (!header.contains(name)) {
                problems.add(new FileProblem(1, name, "This column is missing."));
            }
        }
        if (header.stream().distinct().count() < header.size()) {
            problems.add(new FileProblem(1, "", "A column stands there twice."));
        }
        if (!problems.isEmpty()) {
            throw new UnreadableInvoice(problems);
        }
        return header;
    }

    private void add(CsvRecord record, List<String> header) {
        int number = (int) record.getStartingLineNumber();
        if (rows.size() >= ROWS_AT_MOST) {
            throw new UnreadableInvoice(
                    List.of(new FileProblem(number, "", "More than %d rows; no invoice has.".formatted(ROWS_AT_MOST))));
        }
        Map<String, String> cells = new HashMap<>();
        for (int column = 0; column < record.getFieldCount(); column++) {
            String text = record.getField(column);
            if (column < header.size()) {
                cells.put(header.get(column), text);
            } else if (!text.isBlank()) {
                throw new UnreadableInvoice(List.of(new FileProblem(
                        number, "", "[%s] stands beyond the last column. A separator is too many.".formatted(text))));
            }
        }
        if (cells.values().stream().anyMatch(text -> !text.isBlank())) {
            rows.add(new Row(number, cells));
        }
    }

    /** The rows with anything in them, in the order of the file. */
    List<Row> rows() {
        return rows;
    }

    private static String text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException older) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }
}
