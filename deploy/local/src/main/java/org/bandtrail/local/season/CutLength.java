package org.bandtrail.local.season;

import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;

/** A length as a crew cut it and wrote it down: in the crew's own unit, to the precision of its rule. */
record CutLength(String text, long mm) {

    /** At least this many mm, rounded up to what the crew's rule shows: 1 mm, half a cm or a quarter inch. */
    static CutLength of(long mm, String unit) {
        String text = switch (unit) {
            case "ft-in" -> LengthText.feetAndInches(Length.ofMm((mm * 10 + 63) / 64 * 64 / 10));
            case "cm" -> {
                long halves = (mm + 4) / 5;
                yield halves / 2 + (halves % 2 == 0 ? "" : ".5") + " cm";
            }
            default -> String.format(Locale.ROOT, "%d mm", mm);
        };
        return new CutLength(text, LengthText.parse(text).mm());
    }
}
