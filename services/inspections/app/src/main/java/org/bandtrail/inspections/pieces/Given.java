package org.bandtrail.inspections.pieces;

import org.jspecify.annotations.Nullable;

/** Asks for what a request must say. JSON may leave anything out, whatever the record's types promise. */
public final class Given {
    private Given() {}

    /**
     * Returns the value.
     *
     * @param field its name in the request
     * @throws IllegalArgumentException naming the field if it is missing
     */
    public static <T> T given(String field, @Nullable T value) {
        if (value == null) {
            throw new IllegalArgumentException("Field [%s] is missing. Send it.".formatted(field));
        }
        return value;
    }
}
