package org.bandtrail.kernel;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Lengths as people write and read them: {@code 12.5 m}, {@code 125cm}, {@code 5 ft 3 1/2 in}, {@code 63"},
 * {@code 40 yd}. Values are exact until the last step; then they are rounded to the nearest millimetre, half up. What
 * has two meanings is refused, because guessing is how feet become inches: a number without a unit, and
 * {@code 3,950 mm}, which is four metres to one reader and four millimetres to another.
 */
public final class LengthText {
    private static final String UNIT = "([a-zA-Z\"'″′”’]+)";
    private static final Pattern WHOLE = Pattern.compile("\\s*(\\d{1,7})\\s*" + UNIT);
    private static final Pattern DECIMAL = Pattern.compile("\\s*(\\d{1,7})[.,](\\d{1,4})\\s*" + UNIT);
    private static final Pattern FRACTION =
            Pattern.compile("\\s*(?:(\\d{1,7})\\s+)?(\\d{1,7})\\s*/\\s*(\\d{1,4})\\s*" + UNIT);
    private static final Pattern BARE =
            Pattern.compile("\\d{1,7}([.,]\\d{1,4})?|(\\d{1,7}\\s+)?\\d{1,7}\\s*/\\s*\\d{1,4}");
    private static final Pattern THOUSANDS = Pattern.compile("\\s*[1-9]\\d{0,2},\\d{3}(?!\\d).*");
    private static final long MICROMETRES_PER_MM = 1_000;

    private LengthText() {}

    /**
     * Reads a length with its unit or units.
     *
     * @param text numbers of at most 7 digits with their units, the larger unit first; the last number may have up to 4
     *     digits after a point or comma, or be a fraction such as {@code 3 1/2}
     * @throws IllegalArgumentException naming the text and what to write instead
     */
    public static Length parse(String text) {
        return parse(text, null);
    }

    /**
     * Reads a length whose unit may be given by the context, such as the unit chosen for a column.
     *
     * @param unitIfNone the unit of a bare number, or null to refuse bare numbers
     * @throws IllegalArgumentException naming the text and what to write instead
     */
    public static Length parse(String text, @Nullable LengthUnit unitIfNone) {
        long micrometres = micrometres(text, unitIfNone);
        return Length.ofMm(Math.floorDiv(micrometres + MICROMETRES_PER_MM / 2, MICROMETRES_PER_MM));
    }

    /**
     * Reads a length in whole micrometres, rounded down, for values that are multiplied before they are rounded: 6 in
     * of diameter are 152.4 mm, and pi times 152 mm is not the girth.
     *
     * @param unitIfNone the unit of a bare number, or null to refuse bare numbers
     * @throws IllegalArgumentException naming the text and what to write instead
     */
    public static long micrometres(String text, @Nullable LengthUnit unitIfNone) {
        String rest = text.strip();
        if (unitIfNone != null && BARE.matcher(rest).matches()) {
            rest = rest + unitIfNone.symbol();
        }
        long micrometres = 0;
        long smallest = Long.MAX_VALUE;
        Matcher whole = WHOLE.matcher(rest);
        while (whole.lookingAt()) {
            long unit = smaller(whole.group(2), smallest, text);
            micrometres += Long.parseLong(whole.group(1)) * unit;
            smallest = unit;
            whole.region(whole.end(), rest.length());
        }
        // Only the last number may be broken, so rounding it down once rounds the sum down once.
        String last = rest.substring(whole.regionStart());
        return last.isEmpty() && !rest.isEmpty() ? micrometres : micrometres + broken(last, smallest, text);
    }

    private static long broken(String last, long smallest, String text) {
        Matcher decimal = DECIMAL.matcher(last);
        if (decimal.matches()) {
            if (THOUSANDS.matcher(last).matches()) {
                throw new IllegalArgumentException(
                        "Length [%s] has two meanings. Leave the comma out, or write a point for the decimals."
                                .formatted(text));
            }
            long unit = smaller(decimal.group(3), smallest, text);
            long tenThousandths = Long.parseLong((decimal.group(2) + "000").substring(0, 4));
            return Long.parseLong(decimal.group(1)) * unit + tenThousandths * unit / 10_000;
        }
        Matcher fraction = FRACTION.matcher(last);
        if (!fraction.matches() || Long.parseLong(fraction.group(3)) == 0) {
            throw unreadable(text);
        }
        long unit = smaller(fraction.group(4), smallest, text);
        long whole = fraction.group(1) == null ? 0 : Long.parseLong(fraction.group(1));
        return whole * unit + Long.parseLong(fraction.group(2)) * unit / Long.parseLong(fraction.group(3));
    }

    /** The micrometres of this unit, which must be smaller than the one before: 3 in 5 ft is a slip of the pen. */
    private static long smaller(String spelling, long before, String text) {
        LengthUnit unit = LengthUnit.spelt(spelling);
        if (unit == null || unit.micrometres() >= before) {
            throw unreadable(text);
        }
        return unit.micrometres();
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "Length [%s] cannot be read. Write number and unit: 1250 mm, 1.25 m, 4 ft 1 1/4 in or 3 yd."
                        .formatted(text));
    }

    /** Metres to the millimetre, for example {@code 12.345 m}; trailing zeros are kept so that columns line up. */
    public static String metres(Length length) {
        long mm = Math.abs(length.mm());
        return String.format(Locale.ROOT, "%s%d.%03d m", length.isNegative() ? "-" : "", mm / 1000, mm % 1000);
    }

    /** Feet and inches to the nearest eighth of an inch, for example {@code 4 ft 1 1/8 in}; half goes up. */
    public static String feetAndInches(Length length) {
        long micrometres = Math.multiplyExact(Math.abs(length.mm()), MICROMETRES_PER_MM);
        long eighthMicrometres = LengthUnit.INCH.micrometres() / 8;
        long eighths = (micrometres + eighthMicrometres / 2) / eighthMicrometres;
        long feet = eighths / 96;
        long inches = eighths % 96 / 8;
        long rest = eighths % 8;
        StringBuilder text = new StringBuilder(length.isNegative() && eighths > 0 ? "-" : "");
        if (feet > 0) {
            text.append(feet).append(" ft ");
        }
        if (inches > 0 || rest == 0) {
            text.append(inches);
        }
        if (rest > 0) {
            long divisor = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
            text.append(inches > 0 ? " " : "")
                    .append(rest / divisor)
                    .append('/')
                    .append(8 / divisor);
        }
        return text.append(" in").toString();
    }
}
