package org.bandtrail.kernel;

/** Identity of one band on one tree, from fitting to teardown. */
public record BandId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public BandId {
        value = Identity.checked("band", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
