package org.bandtrail.supplystock.spend;

/** Along which the spend is added up, with the columns that name a row in SQL. */
enum SpendBy {
    /** One row per site. */
    SITE("substr(s.account, 6)", "NULL", "NULL"),
    /** One row per site and tree; the tree is null for what was charged to the site without one. */
    TREE("substr(s.account, 6)", "nullif(s.tree_id, '')", "NULL"),
    /** One row per material. */
    ITEM("NULL", "NULL", "h.material");

    private final String site;
    private final String tree;
    private final String material;

    SpendBy(String site, String tree, String material) {
        this.site = site;
        this.tree = tree;
        this.material = material;
    }

    /**
     * Reads what people write in the address.
     *
     * @throws IllegalArgumentException naming the text and the three words
     */
    static SpendBy of(String text) {
        for (SpendBy by : values()) {
            if (by.name().equalsIgnoreCase(text)) {
                return by;
            }
        }
        throw new IllegalArgumentException("Spend by [%s] is not known. Use site, tree or item.".formatted(text));
    }

    /** The three naming columns and the row's key, by which rows are ordered and paged. */
    String columns() {
        return """
                %1$s AS site_id, %2$s AS tree_id, %3$s AS material, h.currency,
                concat_ws(' ', %1$s, %2$s, %3$s, h.currency) COLLATE "C" AS key""".formatted(site, tree, material);
    }
}
