package org.bandtrail.kernel;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The one spelling rule of all identities: upper-case letters, digits and dashes, 1 to 40 characters. Services use
 * it for identities of their own, such as a purchase's.
 */
public final class Identity {
    private static final Pattern SPELLING = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,39}");

    private Identity() {}

    /**
     * Returns the value in upper case, without surrounding blanks.
     *
     * @throws IllegalArgumentException naming the kind and the value if it is missing or not spelt as an identity
     */
    public static String checked(String kind, @Nullable String value) {
        if (value == null) {
            throw new IllegalArgumentException("A %s is missing. Give its identity.".formatted(kind));
        }
        String spelt = value.strip().toUpperCase(Locale.ROOT);
        if (!SPELLING.matcher(spelt).matches()) {
            throw new IllegalArgumentException(
                    "%s [%s] is not an identity. Use 1 to 40 letters, digits and dashes, a dash never first."
                            .formatted(kind, value));
        }
        return spelt;
    }
}
