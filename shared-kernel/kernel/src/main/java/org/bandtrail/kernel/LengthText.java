package org.bandtrail.kernel;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Lengths as people write and read them: {@code 12.5 m}, {@code 125cm}, {@code 5 ft 3 1/2 in}, {@code 63"},
 * {@code 40 yd}. Values are exact rationals until the last step; then they are rounded to the nearest millimetre, half
 * up. A number without a unit is refused, because guessing the unit is how feet become inches.
 */
public final class LengthText {
    private static final Pattern PART = Pattern.compile(
            "\\s*(?:(\\d{1,7})\\s+)?(\\d{1,7})\\s*/\\s*(\\d{1,4})\\s*([a-zA-Z\"'″′]+)|\\s*(\\d{1,7}(?:[.,]\\d{1,4})?)\\s*([a-zA-Z\"'″′]+)");
    private static final long MICROMETRES_PER_MM = 1_000;

    private LengthText() {}

    /**
     * Reads a length with its unit or units.
     *
     * @param text at most 7 digits before and 4 after the point, point or comma, fractions such as {@code 3 1/2 in}
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
     * Reads a length in whole micrometres, for values that are multiplied before they are rounded: 6 in of diameter are
     * 152.4 mm, and pi times 152 mm is not the girth.
     *
     * @param unitIfNone the unit of a bare number, or null to refuse bare numbers
     * @throws IllegalArgumentException naming the text and what to write instead
     */
    public static long micrometres(String text, @Nullable LengthUnit unitIfNone) {
        String rest = text.strip();
        if (unitIfNone != null && rest.matches("\\d{1,7}([.,]\\d{1,4})?")) {
            rest = rest + unitIfNone.symbol();
        }
        long micrometres = 0;
        Matcher part = PART.matcher(rest);
        int end = 0;
        while (end < rest.length() && part.find(end) && part.start() == end) {
            micrometres = Math.addExact(micrometres, part.group(5) == null ? fraction(part) : decimal(part));
            end = part.end();
        }
        if (end == 0 || !rest.substring(end).isBlank()) {
            throw unreadable(text);
        }
        return micrometres;
    }

    private static long fraction(Matcher part) {
        long whole = part.group(1) == null ? 0 : Long.parseLong(part.group(1));
        long numerator = Long.parseLong(part.group(2));
        long denominator = Long.parseLong(part.group(3));
        if (denominator == 0) {
            throw unreadable(part.group());
        }
        long unit = unit(part.group(4), part.group()).micrometres();
        return whole * unit + numerator * unit / denominator;
    }

    private static long decimal(Matcher part) {
        String number = part.group(5).replace(',', '.');
        int point = number.indexOf('.');
        long unit = unit(part.group(6), part.group()).micrometres();
        if (point < 0) {
            return Math.multiplyExact(Long.parseLong(number), unit);
        }
        String decimals = (number.substring(point + 1) + "0000").substring(0, 4);
        return Math.multiplyExact(Long.parseLong(number.substring(0, point)), unit)
                + Long.parseLong(decimals) * unit / 10_000;
    }

    private static LengthUnit unit(String spelling, String text) {
        LengthUnit unit = LengthUnit.spelt(spelling);
        if (unit == null) {
            throw unreadable(text);
        }
        return unit;
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "Length [%s] cannot be read. Write a number with its unit, such as 1250 mm, 1.25 m, 4 ft 1 1/4 in or 3 yd."
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
        StringBuilder text = new StringBuilder(length.isNegative() ? "-" : "");
        if (feet > 0) {
            text.append(feet).append(" ft ");
        }
        text.append(inches);
        if (rest > 0) {
            long divisor = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
            text.append(' ').append(rest / divisor).append('/').append(8 / divisor);
        }
        return text.append(" in").toString();
    }
}
