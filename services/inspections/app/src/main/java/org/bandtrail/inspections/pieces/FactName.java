package org.bandtrail.inspections.pieces;

import java.util.Locale;
import java.util.regex.Pattern;

/** The spelling of the identities that devices give to visits and teardowns, the same as that of the kernel's. */
public final class FactName {
    private static final Pattern SPELLING = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,39}");

    private FactName() {}

    /**
     * Returns the identity in upper case.
     *
     * @param kind what it names, for the message
     * @throws IllegalArgumentException naming kind and value if it is not spelt as an identity
     */
    public static String checked(String kind, String value) {
        String spelt = value.strip().toUpperCase(Locale.ROOT);
        if (!SPELLING.matcher(spelt).matches()) {
            throw new IllegalArgumentException(
                    "%s [%s] is not an identity. Use 1 to 40 letters, digits and dashes, a letter or digit first."
                            .formatted(kind, value));
        }
        return spelt;
    }
}
