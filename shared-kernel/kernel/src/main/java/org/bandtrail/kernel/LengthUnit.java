package org.bandtrail.kernel;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The units people write lengths in, each an exact whole number of micrometres. Source: NIST Special Publication 811
 * (2008), appendix B.8: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 yd = 0.9144 m, all exact. UN/CEFACT Recommendation 20 codes
 * name the units on the wire.
 */
public enum LengthUnit {
    MILLIMETRE("mm", "MMT", 1_000),
    CENTIMETRE("cm", "CMT", 10_000),
    METRE("m", "MTR", 1_000_000),
    INCH("in", "INH", 25_400),
    FOOT("ft", "FOT", 304_800),
    YARD("yd", "YRD", 914_400);

    private static final Map<String, LengthUnit> SPELLINGS = Map.ofEntries(
            Map.entry("mm", MILLIMETRE),
            Map.entry("millimetre", MILLIMETRE),
            Map.entry("millimeter", MILLIMETRE),
            Map.entry("cm", CENTIMETRE),
            Map.entry("centimetre", CENTIMETRE),
            Map.entry("centimeter", CENTIMETRE),
            Map.entry("m", METRE),
            Map.entry("metre", METRE),
            Map.entry("meter", METRE),
            Map.entry("in", INCH),
            Map.entry("inch", INCH),
            Map.entry("inche", INCH),
            Map.entry("\"", INCH),
            Map.entry("″", INCH),
            Map.entry("ft", FOOT),
            Map.entry("foot", FOOT),
            Map.entry("feet", FOOT),
            Map.entry("'", FOOT),
            Map.entry("′", FOOT),
            Map.entry("yd", YARD),
            Map.entry("yard", YARD));

    private final String symbol;
    private final String rec20;
    private final long micrometres;

    LengthUnit(String symbol, String rec20, long micrometres) {
        this.symbol = symbol;
        this.rec20 = rec20;
        this.micrometres = micrometres;
    }

    /** The symbol shown beside a number. */
    public String symbol() {
        return symbol;
    }

    /** The UN/CEFACT Recommendation 20 code. */
    public String rec20() {
        return rec20;
    }

    /** One unit in micrometres, exact. */
    public long micrometres() {
        return micrometres;
    }

    /** The unit of this spelling (singular or plural, any case), or null if there is none. */
    public static @Nullable LengthUnit spelt(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        LengthUnit exact = SPELLINGS.get(word);
        return exact != null || !word.endsWith("s") ? exact : SPELLINGS.get(word.substring(0, word.length() - 1));
    }
}
