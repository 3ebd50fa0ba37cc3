package org.bandtrail.kernel;

/** Code of a supply item: a kind of tape, mesh or fastener, chosen by the programme. */
public record MaterialCode(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public MaterialCode {
        value = Identity.checked("material", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
