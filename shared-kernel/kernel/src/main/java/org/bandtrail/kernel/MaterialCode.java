package org.bandtrail.kernel;

/** Code of a supply item: a kind of tape, mesh or fastener, chosen by the programme. */
public record MaterialCode(String value) {
    public MaterialCode {
        value = Identity.checked("material", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
