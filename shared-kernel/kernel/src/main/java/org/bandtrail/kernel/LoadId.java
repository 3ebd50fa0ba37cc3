package org.bandtrail.kernel;

/** Identity of a disposal load, the bags that leave together. */
public record LoadId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public LoadId {
        value = Identity.checked("disposal load", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
