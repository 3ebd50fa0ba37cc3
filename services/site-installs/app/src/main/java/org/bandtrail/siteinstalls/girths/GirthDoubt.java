package org.bandtrail.siteinstalls.girths;

import java.util.Comparator;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;
import org.jspecify.annotations.Nullable;

/**
 * Why a girth is not believed as written, and what was probably meant. A doubt asks; it never refuses.
 *
 * @param kind which rule raised it
 * @param value the girth as written
 * @param perhaps the likely meaning, for example {@code 78 in as girth}, null when no other reading fits
 * @param message one sentence or two for the person who wrote it
 */
public record GirthDoubt(Kind kind, String value, @Nullable String perhaps, String message) {

    /** Which rule raised the doubt. */
    public enum Kind {
        /** The trunk is thinner than the smallest that is banded. */
        BELOW_MINIMUM,
        /** The value is too large, or too far from the last one measured. */
        IMPLAUSIBLE
    }

    /**
     * Doubts a written girth.
     *
     * @param known the girth last measured on this tree, null if none is known
     */
    public static Optional<GirthDoubt> about(WrittenGirth written, @Nullable Length known, GirthLimits limits) {
        if (known != null && !limits.believe(written.girth(), known)) {
            return Optional.of(farFromKnown(written, known, limits));
        }
        if (written.girth().compareTo(limits.minimum()) < 0) {
            return Optional.of(tooThin(written, limits));
        }
        if (known == null && !limits.within(written.girth())) {
            return Optional.of(tooLarge(written, limits));
        }
        return Optional.empty();
    }

    /**
     * Doubts a written girth that is larger than the largest trunk of its kind anybody knows of.
     *
     * @param kind the name of the kind, for people
     * @param largest of that kind
     */
    public static Optional<GirthDoubt> ofKind(WrittenGirth written, String kind, Length largest) {
        if (written.girth().compareTo(largest) <= 0) {
            return Optional.empty();
        }
        String perhaps = GirthReadings.of(written).stream()
                .filter(reading -> reading.girth().compareTo(largest) <= 0)
                .findFirst()
                .map(GirthReadings.Reading::words)
                .orElse(null);
        String rule = "no trunk of %s is known above %s.".formatted(kind, both(largest));
        return Optional.of(doubt(Kind.IMPLAUSIBLE, written, perhaps, rule));
    }

    private static GirthDoubt farFromKnown(WrittenGirth written, Length known, GirthLimits limits) {
        String perhaps = GirthReadings.of(written).stream()
                .filter(reading -> limits.believe(reading.girth(), known))
                .min(Comparator.comparing((GirthReadings.Reading reading) ->
                        Math.abs(reading.girth().mm() - known.mm())))
                .map(GirthReadings.Reading::words)
                .orElse(null);
        return doubt(
                Kind.IMPLAUSIBLE, written, perhaps, "the last girth measured on this tree was " + both(known) + ".");
    }

    private static GirthDoubt tooThin(WrittenGirth written, GirthLimits limits) {
        // Thin trees are common, so only the commonest slip is suggested: a diameter written as a girth.
        String perhaps = GirthReadings.of(written).stream()
                .filter(reading ->
                        written.basis() == GirthBasis.GIRTH && reading.words().endsWith("diameter"))
                .filter(reading -> limits.within(reading.girth()))
                .findFirst()
                .map(GirthReadings.Reading::words)
                .orElse(null);
        String rule = "trunks below " + both(limits.minimum()) + " of girth are not banded without a reason.";
        return doubt(Kind.BELOW_MINIMUM, written, perhaps, rule);
    }

    private static GirthDoubt tooLarge(WrittenGirth written, GirthLimits limits) {
        String perhaps = GirthReadings.of(written).stream()
                .filter(reading -> limits.within(reading.girth()))
                .findFirst()
                .map(GirthReadings.Reading::words)
                .orElse(null);
        return doubt(Kind.IMPLAUSIBLE, written, perhaps, "few trunks exceed " + both(limits.questionAbove()) + ".");
    }

    private static GirthDoubt doubt(Kind kind, WrittenGirth written, @Nullable String perhaps, String rule) {
        String start = "%s as %s is a girth of %s; %s"
                .formatted(written.text(), written.basis().word(), both(written.girth()), rule);
        String message = perhaps == null
                ? start + " Measure once more, or confirm it."
                : "%s Perhaps it is %s?".formatted(start, perhaps);
        return new GirthDoubt(kind, written.text(), perhaps, message);
    }

    private static String both(Length length) {
        return "%s (%s)".formatted(LengthText.metres(length), LengthText.feetAndInches(length));
    }
}
