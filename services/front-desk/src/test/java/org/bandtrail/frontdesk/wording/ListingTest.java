package org.bandtrail.frontdesk.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A list says the same as CSV and as XLSX, and nothing in it runs. */
class ListingTest {
    private static final Listing<Line> LINES = new Listing<Line>()
            .column("reel_id", Line::name)
            .column("left_mm", Line::length)
            .column("cost", Line::cost)
            .column("expires_on", Line::expires)
            .column("moved_at", Line::moved)
            .column("open", Line::open);

    private static final Line FULL = new Line(
            "R-0001",
            -1350L,
            new BigDecimal("38.50"),
            LocalDate.of(2027, 3, 31),
            Instant.parse("2026-06-12T18:30:00Z"),
            true);

    private static final Line BARE = new Line("R-0002", null, null, null, null, false);

    private record Line(
            String name,
            @Nullable Long length,
            @Nullable BigDecimal cost,
            @Nullable LocalDate expires,
            @Nullable Instant moved,
            boolean open) {}

    /** OWASP, CSV Injection: cells that begin with = + - @, tab, carriage return or line feed may run as formulas. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+2", "+SUM(A1)", "-2+3", "@cmd", "\t=1", "\r=1", "\n=1", "  =1", "=A(\"x\")", "＝1"})
    void a_cell_that_would_run_as_a_formula_is_written_as_text(String evil) throws IOException {
        Listing<String> list = new Listing<String>().column("name", cell -> cell);
        String text = list.text(List.of(evil));

        assertThat(text.substring(text.indexOf('\n') + 1).replaceFirst("^\"", ""))
                .startsWith("'");
        Row row = read(list.sheet("names", List.of(evil))).get(1);
        assertThat(row.getCell(0).getType()).isEqualTo(CellType.STRING);
        assertThat(row.getCell(0).getFormula()).isNull();
        assertThat(row.getCell(0).asString().replace("\r", "\n")).isEqualTo(evil.replace("\r", "\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1350", "-12.5", "0", "R-0001", "Ruth's yard", "4 ft 1 in"})
    void numbers_and_ordinary_words_are_left_alone(String plain) {
        assertThat(new Listing<String>().column("name", cell -> cell).text(List.of(plain)))
                .isEqualTo("name\r\n" + plain + "\r\n");
    }

    @Test
    void a_sheet_read_back_has_numbers_as_numbers_and_dates_as_dates() throws IOException {
        List<Row> rows = read(LINES.sheet("reels", List.of(FULL, BARE)));

        assertThat(rows).hasSize(3);
        assertThat(rows.get(0).getCellText(1)).isEqualTo("left_mm");
        Row full = rows.get(1);
        assertThat(full.getCellText(0)).isEqualTo("R-0001");
        assertThat(full.getCellAsNumber(1)).contains(new BigDecimal("-1350"));
        assertThat(full.getCellAsNumber(2).orElseThrow()).isEqualByComparingTo("38.50");
        assertThat(full.getCellAsDate(3)).contains(LocalDateTime.of(2027, 3, 31, 0, 0));
        assertThat(full.getCell(3).getDataFormatString()).isEqualTo("yyyy-mm-dd");
        assertThat(full.getCellAsDate(4)).contains(LocalDateTime.of(2026, 6, 12, 18, 30));
        assertThat(full.getCell(4).getDataFormatString()).contains("\\U\\T\\C");
        assertThat(full.getCellAsBoolean(5)).contains(true);
        assertThat(rows.get(2).getCellText(1)).isEmpty();
    }

    @Test
    void the_header_of_a_sheet_is_bold_and_stays_while_the_rows_move() throws IOException {
        byte[] file = LINES.sheet("reels", List.of(FULL));

        assertThat(part(file, "xl/worksheets/sheet1.xml")).contains("ySplit=\"1\"", "state=\"frozen\"");
        assertThat(part(file, "xl/styles.xml")).contains("<b/>");
    }

    @Test
    void a_number_too_long_for_a_spreadsheet_keeps_every_digit_as_text() throws IOException {
        byte[] file = new Listing<Long>().column("n", value -> value).sheet("n", List.of(9_007_199_254_740_993L));

        assertThat(read(file).get(1).getCellText(0)).isEqualTo("9007199254740993");
        assertThat(read(file).get(1).getCell(0).getType()).isEqualTo(CellType.STRING);
    }

    @Test
    void a_list_without_rows_still_has_its_headers() throws IOException {
        assertThat(LINES.text(List.of())).isEqualTo("reel_id,left_mm,cost,expires_on,moved_at,open\r\n");
        assertThat(read(LINES.sheet("reels", List.of()))).hasSize(1);
    }

    @Test
    void another_ending_is_refused_by_name() {
        assertThatThrownBy(() -> LINES.file("reels", "pdf", List.of())).hasMessageContaining("[pdf]");
    }

    private static List<Row> read(byte[] file) throws IOException {
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(file), new ReadingOptions(true, false))) {
            return book.getFirstSheet().read();
        }
    }

    private static String part(byte[] file, String name) throws IOException {
        Path saved = Files.createTempFile("listing", ".xlsx");
        Files.write(saved, file);
        try (ZipFile zip = new ZipFile(saved.toFile())) {
            return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        } finally {
            Files.delete(saved);
        }
    }
}
