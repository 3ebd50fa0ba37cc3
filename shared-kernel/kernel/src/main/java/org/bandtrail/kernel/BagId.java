package org.bandtrail.kernel;

/** Identity of a waste bag, as written on it. */
public record BagId(String value) {
    public BagId {
        value = Identity.checked("bag", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
