package org.bandtrail.siteinstalls.exports;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.jspecify.annotations.Nullable;

/** Trees of a register whose values are awkward to write down. */
public final class TreeSamples {
    private TreeSamples() {}

    /** Quotes, commas, accents, leading zeros, a southern position with trailing zeros, and a tree with gaps. */
    public static List<TreeView> awkward() {
        return List.of(
                tree(
                        "017",
                        "Ailanthus altissima",
                        "AILAL",
                        "40.4417301",
                        "-75.3400000",
                        1_251L,
                        1_370L,
                        "\"old\" gate"),
                tree("A, B", "tree, of heaven", null, "-37.9510334", "0.0000001", 79L, null, "Señora's\nyard; left"),
                tree("18", "", null, null, null, 3_141L, 1_300L, ""));
    }

    private static TreeView tree(
            String tag,
            String species,
            @Nullable String code,
            @Nullable String lat,
            @Nullable String lon,
            long girthMm,
            @Nullable Long heightMm,
            String note) {
        return new TreeView(
                "ALDER-" + tag.replaceAll("[^A-Z0-9]+", "-"),
                "ALDER",
                tag,
                species,
                code,
                lat == null ? null : new BigDecimal(lat),
                lon == null ? null : new BigDecimal(lon),
                girthMm,
                heightMm,
                Instant.parse("2026-03-10T09:30:00Z"),
                note,
                null,
                null,
                0,
                null,
                null);
    }
}
