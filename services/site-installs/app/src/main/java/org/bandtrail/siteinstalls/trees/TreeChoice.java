package org.bandtrail.siteinstalls.trees;

/** Which trees of the register a list shows. */
public enum TreeChoice {
    /** All of them. */
    ALL("TRUE"),
    /** Those that stand. */
    STANDING("gone_at IS NULL AND merged_into IS NULL"),
    /** Those that were felled, fell, died or were not found. */
    GONE("gone_at IS NOT NULL"),
    /** Those that turned out to be the same trunk as another. */
    MERGED("merged_into IS NOT NULL"),
    /** Standing trees nobody ever measured. */
    UNMEASURED("gone_at IS NULL AND merged_into IS NULL AND girth_mm IS NULL"),
    /** Standing trees without a position. */
    NO_POSITION("gone_at IS NULL AND merged_into IS NULL AND latitude_e7 IS NULL"),
    /** Standing trees without a species code. */
    NO_CODE("gone_at IS NULL AND merged_into IS NULL AND species_code IS NULL"),
    /** Standing trees on which no band hangs. */
    UNBANDED("gone_at IS NULL AND merged_into IS NULL"
            + " AND NOT EXISTS (SELECT FROM band WHERE band.tree_id = tree.tree_id AND state = 'up')"
            + " AND NOT EXISTS (SELECT FROM tree AS other JOIN band ON band.tree_id = other.tree_id AND state = 'up'"
            + " WHERE other.merged_into = tree.tree_id)");

    private final String condition;

    TreeChoice(String condition) {
        this.condition = condition;
    }

    /** The condition on rows of {@code tree}. */
    String condition() {
        return condition;
    }
}
