package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Units on the wire: UN/CEFACT Recommendation 20 (revision 17, 2021; datasets/unece-units-of-measure, commit f6427eb)
 * for lengths and counts, and package codes of Recommendation 21, which stand with an X in front. A package says
 * nothing about its content: that comes from the supplier's quote. The bare codes BX, RO, RL and PK were deleted from
 * Recommendation 20, and KT is a tub or barrel, so none of them is guessed at.
 */
public final class UnitCode {
    private static final Map<String, Long> MICROMETRES =
            Map.of("MMT", 1_000L, "CMT", 10_000L, "MTR", 1_000_000L, "INH", 25_400L, "FOT", 304_800L, "YRD", 914_400L);
    private static final Map<String, Long> PIECES = Map.of("C62", 1L, "EA", 1L, "H87", 1L, "PR", 2L, "DZN", 12L);
    private static final Map<String, String> PACKAGES =
            Map.of("XBX", "box", "XRO", "roll", "XRL", "reel", "XPK", "package", "SET", "set");
    private static final Map<String, String> REFUSED = Map.of(
            "BX", "was deleted from Recommendation 20; a box is XBX",
            "RO", "was deleted from Recommendation 20; a roll is XRO",
            "RL", "was deleted from Recommendation 20; a reel is XRL",
            "PK", "was deleted from Recommendation 20; a package is XPK",
            "KT", "is a tub or barrel and not a kit; a set is SET");
    private static final BigDecimal MICROMETRES_PER_MM = BigDecimal.valueOf(1_000);

    private UnitCode() {}

    /** What a quantity is counted in within the books. */
    public enum Measure {
        /** Whole millimetres of tape or mesh. */
        MILLIMETRES,
        /** Whole fasteners. */
        PIECES
    }

    /**
     * A quantity in whole millimetres, rounded half up, or in whole pieces, exact.
     *
     * @param quantity as billed, may be negative
     * @param code as written; small letters are taken too
     * @param measure what the item is counted in
     * @param content millimetres or pieces in one package by the supplier's quote, or null if no quote says
     * @throws IllegalArgumentException naming code and quantity and what to do
     */
    public static long toBooks(BigDecimal quantity, String code, Measure measure, @Nullable Long content) {
        String unit = code.strip().toUpperCase(Locale.ROOT);
        if (REFUSED.containsKey(unit)) {
            throw new IllegalArgumentException(
                    "Unit [%s] %s. Ask the supplier, or enter the line by hand.".formatted(code, REFUSED.get(unit)));
        }
        BigDecimal books = books(quantity, unit, measure, content);
        try {
            return books.longValueExact();
        } catch (ArithmeticException broken) {
            throw new IllegalArgumentException(
                    "[%s %s] is no whole number of %s.".formatted(quantity.toPlainString(), code, words(measure)),
                    broken);
        }
    }

    private static BigDecimal books(BigDecimal quantity, String unit, Measure measure, @Nullable Long content) {
        Long micrometres = MICROMETRES.get(unit);
        Long pieces = PIECES.get(unit);
        if (measure == Measure.MILLIMETRES && micrometres != null) {
            // A foot is 304.8 mm: lengths are rounded to the millimetre once, like those people enter.
            return quantity.multiply(BigDecimal.valueOf(micrometres))
                    .divide(MICROMETRES_PER_MM, 0, RoundingMode.HALF_UP);
        }
        if (measure == Measure.PIECES && pieces != null) {
            return quantity.multiply(BigDecimal.valueOf(pieces));
        }
        // One of something that is measured is one package of it, whatever the package is called.
        boolean counted = measure == Measure.MILLIMETRES && pieces != null;
        if (!PACKAGES.containsKey(unit) && !counted) {
            throw new IllegalArgumentException("Unit [%s] does not give %s. Use %s."
                    .formatted(
                            unit, words(measure), measure == Measure.PIECES ? "C62, DZN or XBX" : "MTR, FOT or XRL"));
        }
        if (content == null || content <= 0) {
            throw new IllegalArgumentException(("Unit [%s] is a %s whose content no quote of the supplier says."
                            + " Enter the pack size of the quote first.")
                    .formatted(unit, PACKAGES.getOrDefault(unit, "piece")));
        }
        long each = counted && pieces != null ? pieces : 1;
        return quantity.multiply(BigDecimal.valueOf(content)).multiply(BigDecimal.valueOf(each));
    }

    private static String words(Measure measure) {
        return measure == Measure.PIECES ? "pieces" : "millimetres";
    }
}
