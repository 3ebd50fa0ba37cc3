package org.bandtrail.kernel;

/** Identity of one physical roll of tape or mesh, as printed on its label. */
public record ReelId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public ReelId {
        value = Identity.checked("reel", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
