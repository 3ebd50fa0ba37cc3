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
 * A list as a CSV file (RFC 4180, UTF-8). Headers carry units; values are the stored ones. A cell that a spreadsheet
 * would run as a formula gets an apostrophe in front, see OWASP, CSV Injection; numbers are left alone.
 */
public final class Csv<T> {
    private static final Pattern RUNS = Pattern.compile("^\\s*[=+\\-@\\t\\r].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private final List<String> headers = new ArrayList<>();
    private final List<Function<T, @Nullable Object>> columns = new ArrayList<>();

    /** Adds a column. */
    public Csv<T> column(String header, Function<T, @Nullable Object> value) {
        headers.add(header);
        columns.add(value);
        return this;
    }

    /** The file as text. */
    public String text(List<T> rows) {
        StringWriter out = new StringWriter();
        // The writer buffers; only closing it gives everything away.
        try (CsvWriter csv = CsvWriter.builder().build(out)) {
            csv.writeRecord(headers);
            for (T row : rows) {
                csv.writeRecord(
                        columns.stream().map(column -> safe(column.apply(row))).toList());
            }
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return out.toString();
    }

    /** The file as an answer that the browser saves under this name. */
    public ResponseEntity<byte[]> file(String name, List<T> rows) {
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(name + ".csv")
                                .build()
                                .toString())
                .body(text(rows).getBytes(StandardCharsets.UTF_8));
    }

    private static String safe(@Nullable Object value) {
        String text = value == null ? "" : value.toString();
        return RUNS.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }
}
