package org.bandtrail.kernel;

/** Identity of a tree in the register, unique over all sites. */
public record TreeId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public TreeId {
        value = Identity.checked("tree", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
