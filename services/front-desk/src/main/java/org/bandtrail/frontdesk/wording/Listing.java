package org.bandtrail.frontdesk.wording;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/**
 * A list as a file: CSV (RFC 4180, UTF-8) or XLSX. Headers carry units; values are the stored ones. In CSV a cell that
 * a spreadsheet would run as a formula gets an apostrophe in front, see OWASP, CSV Injection; numbers are left alone.
 * In XLSX text is stored as text, which never runs, see {@link Sheet}.
 *
 * @param <T> what one row shows
 */
public final class Listing<T> {
    private static final Pattern RUNS =
            Pattern.compile("^\\s*[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private final List<String> headers = new ArrayList<>();
    private final List<Function<T, @Nullable Object>> columns = new ArrayList<>();

    /** Adds a column; a number, a date, a moment or a yes and no keeps its kind in a sheet. */
    public Listing<T> column(String header, Function<T, @Nullable Object> value) {
        headers.add(header);
        columns.add(value);
        return this;
    }

    /** The list as CSV text. */
    public String text(List<T> rows) {
        StringWriter out = new StringWriter();
        // The writer buffers; only closing it gives everything away.
        try (CsvWriter csv = CsvWriter.builder().build(out)) {
            csv.writeRecord(headers);
            for (T row : rows) {
                csv.writeRecord(cells(row).stream().map(Listing::safe).toList());
            }
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return out.toString();
    }

    /** The list as an XLSX file with one sheet of this name, more where there are too many rows for one. */
    public byte[] sheet(String name, List<T> rows) {
        return Sheet.of(name, headers, rows, this::cells);
    }

    /**
     * The list as an answer that the browser saves under this name.
     *
     * @param ending {@code csv} or {@code xlsx}
     */
    public ResponseEntity<byte[]> file(String name, String ending, List<T> rows) {
        return switch (ending) {
            case "csv" ->
                saved(
                        name + ".csv",
                        new MediaType("text", "csv", StandardCharsets.UTF_8),
                        text(rows).getBytes(StandardCharsets.UTF_8));
            case "xlsx" -> saved(name + ".xlsx", Sheet.TYPE, sheet(name, rows));
            default ->
                throw new IllegalArgumentException(
                        "A list comes out as csv or xlsx, not as [" + ending + "]; ask for one of the two.");
        };
    }

    /** A file that was made elsewhere, saved by the browser under this name. */
    public static ResponseEntity<byte[]> saved(String fileName, MediaType type, byte[] content) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(fileName)
                                .build()
                                .toString())
                .body(content);
    }

    private List<@Nullable Object> cells(T row) {
        List<@Nullable Object> cells = new ArrayList<>(columns.size());
        for (Function<T, @Nullable Object> column : columns) {
            cells.add(column.apply(row));
        }
        return cells;
    }

    private static String safe(@Nullable Object value) {
        String text = value == null ? "" : value.toString();
        return RUNS.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }
}
