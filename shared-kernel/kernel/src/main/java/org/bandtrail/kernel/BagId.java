package org.bandtrail.kernel;

/** Identity of a waste bag, as written on it. */
public record BagId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public BagId {
        value = Identity.checked("bag", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
