package org.bandtrail.inspections.sightings;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** How the choices of this package are written outside: lower case with dashes, {@code NOT_READ} as not-read. */
final class Spelling {
    private Spelling() {}

    static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Reads a choice.
     *
     * @throws IllegalArgumentException naming the text and all choices
     */
    static <E extends Enum<E>> E read(Class<E> choices, String what, String text) {
        String spelt = text.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        for (E choice : choices.getEnumConstants()) {
            if (of(choice).equals(spelt)) {
                return choice;
            }
        }
        String all = Arrays.stream(choices.getEnumConstants()).map(Spelling::of).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("%s [%s] is not known. Write one of: %s.".formatted(what, text, all));
    }
}
