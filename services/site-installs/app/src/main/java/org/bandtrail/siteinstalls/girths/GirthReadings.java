package org.bandtrail.siteinstalls.girths;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthUnit;

/**
 * What else a written girth may have meant: the same number in another unit (feet for inches is a factor of 12, cm for
 * mm 10, inches for cm 2.54) or the other of girth and diameter (a factor of pi). The order is that of how often the
 * slip is made, so that the first reading that fits is the best guess.
 */
final class GirthReadings {
    private static final Pattern ONE_NUMBER = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*([a-zA-Z\"'″′]+)");
    private static final List<LengthUnit> UNITS =
            List.of(LengthUnit.INCH, LengthUnit.CENTIMETRE, LengthUnit.MILLIMETRE, LengthUnit.FOOT, LengthUnit.METRE);

    /**
     * Another meaning of the same writing.
     *
     * @param words how to say it, for example {@code 78 in} or {@code 39 cm as diameter}
     * @param girth the girth it gives
     */
    record Reading(String words, Length girth) {}

    private GirthReadings() {}

    /** All other readings that are sizes of a trunk at all, most likely first. */
    static List<Reading> of(WrittenGirth written) {
        List<Reading> readings = new ArrayList<>();
        Matcher one = ONE_NUMBER.matcher(written.text());
        LengthUnit unit = one.matches() ? LengthUnit.spelt(one.group(2)) : null;
        if (unit == LengthUnit.FOOT) {
            addReading(readings, "%s in".formatted(one.group(1)), written.basis());
        }
        addReading(readings, written.text(), written.basis().other());
        if (unit != null) {
            for (LengthUnit other : UNITS) {
                if (other != unit) {
                    addReading(readings, "%s %s".formatted(one.group(1), other.symbol()), written.basis());
                }
            }
        }
        return List.copyOf(readings);
    }

    private static void addReading(List<Reading> readings, String text, GirthBasis basis) {
        if (WrittenGirth.isTrunk(text, basis)) {
            Length girth = new WrittenGirth(text, basis).girth();
            readings.add(new Reading("%s as %s".formatted(text, basis.word()), girth));
        }
    }
}
