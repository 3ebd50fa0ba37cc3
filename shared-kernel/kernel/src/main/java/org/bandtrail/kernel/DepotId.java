package org.bandtrail.kernel;

/** Identity of a depot, the store from which crews are served. */
public record DepotId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public DepotId {
        value = Identity.checked("depot", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
