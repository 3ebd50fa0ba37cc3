package org.bandtrail.kernel;

/** Identity of a crew, the people who go out together. */
public record CrewId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public CrewId {
        value = Identity.checked("crew", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
