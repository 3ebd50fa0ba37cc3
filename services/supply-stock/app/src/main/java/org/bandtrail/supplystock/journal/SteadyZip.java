package org.bandtrail.supplystock.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Writes a workbook again without the moment it was written: the same content gives the same bytes. Every entry bears
 * the first moment a ZIP file can say, and the workbook's own date of creation is that moment too.
 */
final class SteadyZip {
    private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final String PROPERTIES = "docProps/core.xml";

    private SteadyZip() {}

    static byte[] of(byte[] workbook) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(workbook.length);
        try {
            // The writer leaves sizes to the directory at the end, which only a file can be read by.
            Path written = Files.createTempFile("journal", ".xlsx");
            try {
                Files.write(written, workbook);
                copy(written, out);
            } finally {
                Files.delete(written);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException("The journal could not be written to the temporary folder.", failed);
        }
        return out.toByteArray();
    }

    private static void copy(Path written, ByteArrayOutputStream out) throws IOException {
        try (ZipFile from = new ZipFile(written.toFile());
                ZipOutputStream to = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            for (ZipEntry entry : Collections.list(from.entries())) {
                ZipEntry steady = new ZipEntry(entry.getName());
                steady.setTimeLocal(FIRST);
                to.putNextEntry(steady);
                byte[] content = from.getInputStream(entry).readAllBytes();
                to.write(entry.getName().equals(PROPERTIES) ? undated(content) : content);
                to.closeEntry();
            }
        }
    }

    private static byte[] undated(byte[] properties) {
        return new String(properties, StandardCharsets.UTF_8)
                .replaceAll("(<dcterms:(created|modified)[^>]*>)[^<]*", "$1" + FIRST + ":00Z")
                .getBytes(StandardCharsets.UTF_8);
    }
}
