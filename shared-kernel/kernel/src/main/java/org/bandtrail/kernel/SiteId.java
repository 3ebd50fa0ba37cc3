package org.bandtrail.kernel;

/** Identity of a site, the ground of one consent. */
public record SiteId(String value) {
    public SiteId {
        value = Identity.checked("site", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
