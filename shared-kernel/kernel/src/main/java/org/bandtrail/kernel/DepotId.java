package org.bandtrail.kernel;

/** Identity of a depot, the store from which crews are served. */
public record DepotId(String value) {
    public DepotId {
        value = Identity.checked("depot", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
