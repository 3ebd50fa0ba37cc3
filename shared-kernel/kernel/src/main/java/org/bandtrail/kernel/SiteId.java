package org.bandtrail.kernel;

/** Identity of a site, the ground of one consent. */
public record SiteId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    public SiteId {
        value = Identity.checked("site", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
