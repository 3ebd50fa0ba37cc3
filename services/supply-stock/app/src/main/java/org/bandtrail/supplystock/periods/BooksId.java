package org.bandtrail.supplystock.periods;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/**
 * Names one set of books. A service keeps one, so that all its months form one order.
 *
 * @param value upper-case letters, digits and dashes
 */
public record BooksId(@JsonValue String value) {
    /** The books of this service. */
    public static final BooksId MAIN = new BooksId("BOOKS");

    /** Accepts small letters; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public BooksId {
        value = Identity.checked("set of books", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
