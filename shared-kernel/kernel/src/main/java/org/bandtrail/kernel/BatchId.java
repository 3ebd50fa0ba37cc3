package org.bandtrail.kernel;

/** Identity of one delivery of fasteners, as printed on its box. */
public record BatchId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public BatchId {
        value = Identity.checked("batch", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
