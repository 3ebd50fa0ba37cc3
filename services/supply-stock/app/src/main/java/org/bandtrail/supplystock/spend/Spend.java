package org.bandtrail.supplystock.spend;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The spend as people see it.
 *
 * @param by site, tree, item, crew, person, month or grant
 * @param rows one page, ordered by name, then currency
 * @param next cursor of the next page, or null on the last
 * @param total over all rows of the main currency, the one in which most was received; null before the first receipt
 * @param identity of the main currency, null before the first receipt
 * @param otherCurrencies total and identity of each further currency
 * @param notReceived used by the field, but without a receipt in the books: it has no price yet and is in no sum above
 * @param readAt when this was read
 */
public record Spend(
        String by,
        List<SpendRow> rows,
        @Nullable String next,
        @Nullable SpendRow total,
        @Nullable SpendIdentity identity,
        List<InCurrency> otherCurrencies,
        List<NotReceived> notReceived,
        Instant readAt) {

    /** Total and identity of one currency. */
    public record InCurrency(SpendRow total, SpendIdentity identity) {}

    /**
     * Material used at a site before its receipt is in the books.
     *
     * @param holding reel or batch
     * @param quantity millimetres of a reel, pieces of a batch
     */
    public record NotReceived(String holding, String id, String siteId, long quantity) {}
}
