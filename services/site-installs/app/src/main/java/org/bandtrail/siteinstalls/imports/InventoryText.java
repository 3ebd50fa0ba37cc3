package org.bandtrail.siteinstalls.imports;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The characters of an uploaded file. A byte order mark decides; without one the file is UTF-8 if it can be, otherwise
 * it is read as Windows-1252, which every byte sequence of an office program is, and a note says so.
 *
 * @param text without byte order mark
 * @param encoding how it was read
 * @param note what to look at, null if nothing
 */
public record InventoryText(
        String text, String encoding, @Nullable String note) {
    private static final Charset OFFICE = Charset.forName("windows-1252");

    /** Decodes the bytes; never fails, at worst with a note. */
    public static InventoryText decode(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return decoded(bytes, 3, StandardCharsets.UTF_8);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16BE);
        }
        return decoded(bytes, 0, StandardCharsets.UTF_8);
    }

    private static InventoryText decoded(byte[] bytes, int start, Charset charset) {
        ByteBuffer body = ByteBuffer.wrap(bytes, start, bytes.length - start);
        try {
            String text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(body)
                    .toString();
            return new InventoryText(text, charset.name(), null);
        } catch (CharacterCodingException notThisCharset) {
            String text = new String(bytes, start, bytes.length - start, OFFICE);
            String note = "The file is not %s (%s), so it was read as Windows-1252. Look at names with accents."
                    .formatted(charset.name(), notThisCharset.getMessage());
            return new InventoryText(text, OFFICE.name(), note);
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** The separator of the first line: the comma, semicolon or tab it has most of outside quotes. */
    public char separator() {
        int commas = 0;
        int semicolons = 0;
        int tabs = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length() && (quoted || text.charAt(i) != '\n'); i++) {
            char sign = text.charAt(i);
            quoted = quoted != (sign == '"');
            if (!quoted) {
                commas += sign == ',' ? 1 : 0;
                semicolons += sign == ';' ? 1 : 0;
                tabs += sign == '\t' ? 1 : 0;
            }
        }
        if (semicolons > commas && semicolons > tabs) {
            return ';';
        }
        return tabs > commas ? '\t' : ',';
    }
}
