package org.bandtrail.supplystock.books;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The books at a past moment.
 *
 * @param by place, item, account or holding
 * @param at up to when things had happened
 * @param knownAt up to when the books had learnt of them, for what was known then
 * @param rows one page
 * @param next cursor of the next page, or null on the last
 * @param totals of the page's whole list, by currency; stock for places, items and holdings, paid for accounts
 */
public record AsOf(
        String by,
        Instant at,
        Instant knownAt,
        List<Row> rows,
        @Nullable String next,
        List<Total> totals) {

    /**
     * One balance, as known then and as known now.
     *
     * @param key orders the rows and is the cursor of the next page
     * @param name place, account, or reel or batch; the item itself where the list is by item
     * @param kind TAPE, MESH, FASTENER, or empty before its receipt
     * @param quantityThen millimetres, or pieces of fasteners
     * @param minorThen minor units; 0 for what is out of stock and for a single batch, whose value lies in its pool
     */
    public record Row(
            @JsonIgnore String key,
            String name,
            String materialCode,
            String kind,
            String currency,
            long quantityThen,
            long minorThen,
            long quantityNow,
            long minorNow) {}

    /** Sums of one currency in minor units. */
    public record Total(String currency, long minorThen, long minorNow) {}
}
