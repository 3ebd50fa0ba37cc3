package org.bandtrail.siteinstalls.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bandtrail.kernel.Length;
import org.jspecify.annotations.Nullable;

/**
 * Asks about values of a policy that are unlike those of the trade, and says what was perhaps meant: inches typed as
 * millimetres (2 for 50), centimetres typed as millimetres, millimetres typed as inches, double the opening (1 in for
 * 1/2 in). 1 in = 25.4 mm exactly (NIST SP 811, appendix B.8). A question forbids nothing.
 */
public final class PolicyQuestions {
    private PolicyQuestions() {}

    /**
     * One question.
     *
     * @param field name of the value
     * @param value what was given, in words
     * @param perhaps what was probably meant, null if nothing suggests itself
     * @param message one or two sentences
     */
    public record Question(
            String field, String value, @Nullable String perhaps, String message) {}

    /** A slip, and what it does to a value: what was given times the factor was meant. */
    private record Slip(String words, double factor) {}

    // The smallest slip that explains a value comes first.
    private static final List<Slip> SLIPS = List.of(
            new Slip("twice what was meant", 0.5),
            new Slip("inches typed as millimetres", 25.4),
            new Slip("centimetres typed as millimetres", 10),
            new Slip("millimetres typed as inches", 1 / 25.4),
            new Slip("millimetres typed as centimetres", 0.1));

    /** All questions, in the order of the guides. */
    public static List<Question> about(CutLengths values, List<ValueGuide> guides) {
        Map<String, Long> numbers = numbers(CutPolicyView.Values.of(values));
        List<Question> questions = new ArrayList<>();
        for (ValueGuide guide : guides) {
            Long value = numbers.get(guide.name());
            if (value != null && guide.low() != null && guide.high() != null) {
                about(guide, value, guide.low(), guide.high()).ifPresent(questions::add);
            }
        }
        geometry(values).ifPresent(questions::add);
        unguarded(values).ifPresent(questions::add);
        return List.copyOf(questions);
    }

    private static Optional<Question> about(ValueGuide guide, long value, long low, long high) {
        if (value >= low && value <= high) {
            return Optional.empty();
        }
        String given = words(guide, value);
        String usual = "usual is %s to %s".formatted(words(guide, low), words(guide, high));
        if (guide.unit().equals("mm")) {
            for (Slip slip : SLIPS) {
                long meant = Math.round(value * slip.factor());
                if (meant >= low && meant <= high) {
                    return Optional.of(new Question(
                            guide.name(),
                            given,
                            words(guide, meant),
                            "%s [%s]: %s. Perhaps %s, %s?"
                                    .formatted(guide.label(), given, usual, words(guide, meant), slip.words())));
                }
            }
        }
        return Optional.of(new Question(
                guide.name(), given, null, "%s [%s]: %s. Is it meant?".formatted(guide.label(), given, usual)));
    }

    /** The guard of this policy must stand off as far as this policy asks: (x - s) / (2 pi), x extra and s seam. */
    private static Optional<Question> geometry(CutLengths values) {
        long spare = values.mesh().extra().mm() - values.setup().seam().mm();
        long standOff = Math.round(spare / (2 * Math.PI));
        long asked = values.mesh().leastStandOff().mm();
        if (standOff >= asked) {
            return Optional.empty();
        }
        long needed =
                (long) Math.ceil(2 * Math.PI * asked) + values.setup().seam().mm();
        return Optional.of(new Question(
                "meshExtraMm",
                mm(values.mesh().extra()),
                mm(Length.ofMm(needed)),
                "A guard cut %s longer than the girth, with a seam of %s, stands off %d mm; this policy asks for %d mm."
                                .formatted(
                                        mm(values.mesh().extra()),
                                        mm(values.setup().seam()),
                                        standOff,
                                        asked)
                        + " Perhaps %s longer?".formatted(mm(Length.ofMm(needed)))));
    }

    private static Optional<Question> unguarded(CutLengths values) {
        return values.setup().guard() != CutLengths.GuardType.NONE
                ? Optional.empty()
                : Optional.of(
                        new Question(
                                "guardType",
                                "none",
                                "mesh",
                                "Without a guard birds, bats and squirrels stick to the tape. Is that meant, and is it allowed?"));
    }

    private static String words(ValueGuide guide, long value) {
        return switch (guide.unit()) {
            case "mm" -> mm(Length.ofMm(value));
            case "permille" -> "%d thousandths".formatted(value);
            default -> "%d %s".formatted(value, guide.unit());
        };
    }

    private static String mm(Length length) {
        return length.mm() + " mm";
    }

    private static Map<String, Long> numbers(CutPolicyView.Values values) {
        Map<String, Long> numbers = new TreeMap<>();
        PolicyPage.named(values).forEach((name, value) -> {
            if (value instanceof Number number) {
                numbers.put(name, number.longValue());
            }
        });
        return numbers;
    }
}
