package org.bandtrail.supplystock.spend;

import com.fasterxml.jackson.annotation.JsonIgnore;
import org.jspecify.annotations.Nullable;

/**
 * What one site, tree, item, crew, person, grant or month cost, in minor units of one currency, and how much material
 * that was. Of the seven names only those of the way of adding up are there; the total line has none.
 *
 * @param key orders the rows and is the cursor of the next page
 * @param totalMinor charged to sites: tape, mesh and fasteners together, and also used and scrapped together
 * @param missingMinor written off without any site, beside the total
 * @param writtenDownMinor lost in value before use, beside the total
 * @param tapeMm millimetres of tape charged to sites
 * @param pieces fasteners charged to sites
 */
public record SpendRow(
        @JsonIgnore String key,
        @Nullable String siteId,
        @Nullable String treeId,
        @Nullable String materialCode,
        @Nullable String crewId,
        @Nullable String personId,
        @Nullable String grantId,
        @Nullable String month,
        String currency,
        long tapeMinor,
        long meshMinor,
        long fastenerMinor,
        long totalMinor,
        long usedMinor,
        long scrappedMinor,
        long missingMinor,
        long writtenDownMinor,
        long tapeMm,
        long meshMm,
        long pieces) {

    /** A row with the names that this way of adding up gives. */
    static SpendRow of(SpendBy by, String key, @Nullable String name, @Nullable String name2, Sums sums) {
        return new SpendRow(
                key,
                by == SpendBy.SITE || by == SpendBy.TREE ? name : null,
                by == SpendBy.TREE ? name2 : null,
                by == SpendBy.ITEM ? name : null,
                by == SpendBy.CREW ? name : null,
                by == SpendBy.PERSON ? name : null,
                by == SpendBy.GRANT ? name : null,
                by == SpendBy.MONTH ? name : null,
                sums.currency(),
                sums.tapeMinor(),
                sums.meshMinor(),
                sums.fastenerMinor(),
                sums.tapeMinor() + sums.meshMinor() + sums.fastenerMinor(),
                sums.tapeMinor() + sums.meshMinor() + sums.fastenerMinor() - sums.scrappedMinor(),
                sums.scrappedMinor(),
                sums.missingMinor(),
                sums.writtenDownMinor(),
                sums.tapeMm(),
                sums.meshMm(),
                sums.pieces());
    }

    /** The sums of a row, each charged to sites unless its name says otherwise. */
    record Sums(
            String currency,
            long tapeMinor,
            long meshMinor,
            long fastenerMinor,
            long scrappedMinor,
            long missingMinor,
            long writtenDownMinor,
            long tapeMm,
            long meshMm,
            long pieces) {
        static Sums none(String currency) {
            return new Sums(currency, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        }

        Sums plus(Sums other) {
            return new Sums(
                    currency,
                    tapeMinor + other.tapeMinor,
                    meshMinor + other.meshMinor,
                    fastenerMinor + other.fastenerMinor,
                    scrappedMinor + other.scrappedMinor,
                    missingMinor + other.missingMinor,
                    writtenDownMinor + other.writtenDownMinor,
                    tapeMm + other.tapeMm,
                    meshMm + other.meshMm,
                    pieces + other.pieces);
        }
    }
}
