package org.bandtrail.kernel;

/** Identity of one band on one tree, from fitting to teardown. */
public record BandId(String value) {
    public BandId {
        value = Identity.checked("band", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
