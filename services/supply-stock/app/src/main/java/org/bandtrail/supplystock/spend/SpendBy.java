package org.bandtrail.supplystock.spend;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Along which the spend is added up, with the expressions that name a row in SQL. */
enum SpendBy {
    /** One row per site; what was lost without a site stands under none. */
    SITE("nullif(a.site_id, '')"),
    /** One row per site and tree; the tree is null for what was charged to the site without one. */
    TREE("nullif(a.site_id, '')", "nullif(a.tree_id, '')"),
    /** One row per item. */
    ITEM("a.material"),
    /** One row per crew, as crews were when the material was used; null for people of no crew. */
    CREW("nullif(a.crew_id, '')"),
    /** One row per person in whose custody the material was, else who reported it. */
    PERSON("nullif(a.person_id, '')"),
    /** One row per month the cost posts to. */
    MONTH("a.period"),
    /** One row per grant, split off by the shares of each site; null for what no grant pays. */
    GRANT("NULL");

    private final String[] columns;

    SpendBy(String... columns) {
        this.columns = columns;
    }

    /**
     * Reads what people write in the address.
     *
     * @throws IllegalArgumentException naming the text and the words
     */
    static SpendBy of(String text) {
        for (SpendBy by : values()) {
            if (by.name().equalsIgnoreCase(text)) {
                return by;
            }
        }
        String known = Arrays.stream(values()).map(SpendBy::word).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("Spend by [%s] is not known. Use one of %s.".formatted(text, known));
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The name of the row, a second name for a tree, and the row's key, by which rows are ordered and paged. */
    String naming() {
        String first = columns[0];
        String second = columns.length > 1 ? columns[1] : "NULL";
        return """
                %1$s AS name, %2$s AS name2, a.currency,
                concat_ws(' ', %1$s, %2$s, a.currency) COLLATE "C" AS key""".formatted(first, second);
    }
}
