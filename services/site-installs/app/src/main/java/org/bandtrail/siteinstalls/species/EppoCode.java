package org.bandtrail.siteinstalls.species;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A code of the EPPO list of plants and pests, for example {@code AILAL}: 5 to 7 capital letters and digits. Whether
 * the list has the code is not checked here, because a register must also take what the house's own data does not know.
 *
 * @param value the code
 */
public record EppoCode(@JsonValue String value) {
    private static final Pattern SPELLING = Pattern.compile("[A-Z0-9]{5,7}");

    /**
     * Accepts small letters and surrounding blanks.
     *
     * @throws IllegalArgumentException naming the value that is no such code
     */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public EppoCode {
        value = value.strip().toUpperCase(Locale.ROOT);
        if (!SPELLING.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "Species code [%s] is no EPPO code. Use its 5 to 7 letters and digits, such as AILAL."
                            .formatted(value));
        }
    }

    /** Tells whether the text is spelt like a code. */
    public static boolean isSpeltLikeOne(String text) {
        return SPELLING.matcher(text.strip().toUpperCase(Locale.ROOT)).matches();
    }

    @Override
    public String toString() {
        return value;
    }
}
