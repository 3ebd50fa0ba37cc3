package org.bandtrail.frontdesk.policies;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.wording.Figures;
import org.jspecify.annotations.Nullable;

/**
 * A value of the policy, put in words for a reader.
 *
 * @param field its name in a form
 * @param text with its unit
 * @param typed as it is typed in a form
 * @param usual from what to what needs no question, null for words
 */
record ValueLine(
        Policies.Value value,
        String field,
        String text,
        String typed,
        @Nullable String usual) {
    static ValueLine of(Policies.Value value, Figures figures) {
        Policies.Guide guide = value.guide();
        return new ValueLine(
                value,
                guide.name().replaceAll("Mm$", ""),
                words(value.value(), guide.unit(), figures),
                guide.unit().equals("mm")
                        ? figures.typed(number(value.value()))
                        : value.value().toString(),
                guide.low() == null || guide.high() == null
                        ? null
                        : words(guide.low(), guide.unit(), figures) + " to "
                                + words(guide.high(), guide.unit(), figures));
    }

    static List<ValueLine> of(List<Policies.Value> values, Figures figures) {
        return values.stream().map(value -> of(value, figures)).toList();
    }

    /** A value in words. */
    static String words(Object value, String unit, Figures figures) {
        return switch (unit) {
            case "mm" -> figures.piece(number(value));
            case "permille" -> figures.number(number(value) / 10.0) + " %";
            case "yes-no" -> Boolean.parseBoolean(value.toString()) ? "yes" : "no";
            case "word" -> value.toString();
            default -> figures.count(number(value)) + " " + (number(value) == 1 ? unit.replaceAll("s$", "") : unit);
        };
    }

    private static long number(Object value) {
        return Long.parseLong(value.toString());
    }
}
