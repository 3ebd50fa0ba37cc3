package org.bandtrail.siteinstalls.contacts;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What people write down about a contact.
 *
 * @param name 1 to 120 characters
 * @param phone as dialled, null if not known
 * @param email null if not known
 * @param address for a letter, null if not known
 */
public record ContactDetails(
        String name,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String address) {
    private static final int LONGEST = 200;

    /**
     * Strips blanks.
     *
     * @throws IllegalArgumentException naming what is missing or too long
     */
    public ContactDetails {
        name = spelt("name", name);
        phone = spelt("phone", phone);
        email = spelt("email", email);
        address = spelt("address", address);
        if (name.isEmpty()) {
            throw new IllegalArgumentException("The contact has no name. Say who gives the consent.");
        }
    }

    private static String spelt(String what, @Nullable String given) {
        String text = Objects.requireNonNullElse(given, "").strip();
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "The contact's %s has %d characters. Give at most %d.".formatted(what, text.length(), LONGEST));
        }
        return text;
    }
}
