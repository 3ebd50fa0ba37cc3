package org.bandtrail.kernel;

/** Identity of a kit, what one crew carries out in one handout. */
public record KitId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public KitId {
        value = Identity.checked("kit", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
