package org.bandtrail.kernel;

/** Identity of a kit, what one crew carries out in one handout. */
public record KitId(String value) {
    public KitId {
        value = Identity.checked("kit", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
