package org.bandtrail.kernel;

/** Pseudonymous identity of a person. Names live in an erasable table, never in an event. */
public record PersonId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public PersonId {
        value = Identity.checked("person", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
