package org.bandtrail.frontdesk.wording;

import java.util.Locale;
import java.util.Map;

/**
 * Units of the wire in words: UN/CEFACT Recommendation 20 codes, and package codes of Recommendation 21 behind an X. A
 * code without a word here is shown as it was written.
 */
public final class UnitWords {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("MTR", "m"),
            Map.entry("CMT", "cm"),
            Map.entry("MMT", "mm"),
            Map.entry("FOT", "ft"),
            Map.entry("INH", "in"),
            Map.entry("YRD", "yd"),
            Map.entry("C62", "pieces"),
            Map.entry("EA", "pieces"),
            Map.entry("H87", "pieces"),
            Map.entry("PR", "pairs"),
            Map.entry("DZN", "dozens"),
            Map.entry("SET", "sets"),
            Map.entry("XBX", "boxes"),
            Map.entry("XRO", "rolls"),
            Map.entry("XRL", "reels"),
            Map.entry("XPK", "packs"));

    private UnitWords() {}

    /** The word for a code, plural. */
    public static String of(String code) {
        return WORDS.getOrDefault(code.strip().toUpperCase(Locale.ROOT), code);
    }
}
