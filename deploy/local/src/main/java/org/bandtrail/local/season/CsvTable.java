package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A file being written: a header and rows, comma separated, quoted where needed (RFC 4180), lines ending in LF. */
final class CsvTable {
    private final String header;
    private final List<String> lines = new ArrayList<>();

    CsvTable(String header) {
        this.header = header;
    }

    /** Adds a row; every cell is its text, an empty one is "". */
    void add(Object... cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            line.append(i == 0 ? "" : ",").append(quoted(cells[i].toString()));
        }
        lines.add(line.toString());
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** Adds the last row once more, as a telephone does that did not hear the answer. */
    void repeatLast() {
        lines.add(lines.getLast());
    }

    int size() {
        return lines.size();
    }

    /** Writes the file, replacing what was there. */
    void write(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        StringBuilder text = new StringBuilder(header).append('\n');
        lines.forEach(line -> text.append(line).append('\n'));
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
