package org.bandtrail.frontdesk.trees;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A tree list as somebody's spreadsheet wrote it: its text, and the names of its columns for the next step. */
final class TreeFile {
    private static final Charset OFFICE = Charset.forName("windows-1252");

    private TreeFile() {}

    /** The text: UTF-16 if it says so, else UTF-8 if it is that, else Windows-1252, which old spreadsheets write. */
    static String text(byte[] bytes) {
        boolean wide = bytes.length > 1
                && (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF
                        || bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE);
        if (wide) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException older) {
            return new String(bytes, OFFICE);
        }
    }

    /** The names in the first line, whichever of comma, semicolon and tab parts them. */
    static List<String> columns(String text) {
        String first = text.lines().findFirst().orElse("");
        char separator = Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        sign -> first.chars().filter(c -> c == sign).count()))
                .orElse(',');
        try (CsvReader<CsvRecord> csv =
                CsvReader.builder().fieldSeparator(separator).ofCsvRecord(text)) {
            return csv.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }
}
