package org.bandtrail.kernel;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The units people write lengths in, each an exact whole number of micrometres. Source: NIST Special Publication 811
 * (2008), appendix B.8: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 yd = 0.9144 m, all exact. UN/CEFACT Recommendation 20 codes
 * name the units on the wire.
 */
public enum LengthUnit {
    MILLIMETRE("mm", "MMT", 1_000, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CENTIMETRE("cm", "CMT", 10_000, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    METRE("m", "MTR", 1_000_000, "m", "metre", "metres", "meter", "meters"),
    INCH("in", "INH", 25_400, "in", "ins", "inch", "inches", "\"", "″", "”", "''"),
    FOOT("ft", "FOT", 304_800, "ft", "foot", "feet", "'", "′", "’"),
    YARD("yd", "YRD", 914_400, "yd", "yds", "yard", "yards");

    private static final Map<String, LengthUnit> BY_SPELLING = bySpelling();

    private final String symbol;
    private final String rec20;
    private final long micrometres;
    private final List<String> spellings;

    LengthUnit(String symbol, String rec20, long micrometres, String... spellings) {
        this.symbol = symbol;
        this.rec20 = rec20;
        this.micrometres = micrometres;
        this.spellings = List.of(spellings);
    }

    private static Map<String, LengthUnit> bySpelling() {
        Map<String, LengthUnit> units = new HashMap<>();
        for (LengthUnit unit : values()) {
            unit.spellings.forEach(spelling -> units.put(spelling, unit));
        }
        return Map.copyOf(units);
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

    /** The unit of this symbol or word (singular or plural, any case), or null if there is none. */
    public static @Nullable LengthUnit spelt(String text) {
        return BY_SPELLING.get(text.strip().toLowerCase(Locale.ROOT));
    }
}
