package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.bandtrail.supplystock.costs.LargestRemainder;

/** All shares of all sites over time, for splitting what sites cost. Amounts are split whole, nothing is rounded away. */
public final class Payers {
    /** What stands for cost that no grant pays. */
    public static final String NOBODY = "";

    private final Map<String, NavigableMap<YearMonth, List<GrantShare>>> bySite = new TreeMap<>();

    /** Payers as these rows say. */
    public Payers(List<SiteShareRow> rows) {
        rows.forEach(row ->
                bySite.computeIfAbsent(row.siteId(), unused -> new TreeMap<>()).put(row.from(), row.shares()));
    }

    /** The shares of a site in a month, empty if no grant pays. */
    public List<GrantShare> of(String site, YearMonth month) {
        NavigableMap<YearMonth, List<GrantShare>> versions = bySite.get(site);
        var version = versions == null ? null : versions.floorEntry(month);
        return version == null ? List.of() : version.getValue();
    }

    /**
     * Splits what a site cost in a month.
     *
     * @param amount minor units, millimetres or pieces, also below zero
     * @return by grant, {@link #NOBODY} if no grant pays; the parts add up to the amount
     */
    public Map<String, Long> split(String site, YearMonth month, long amount) {
        List<GrantShare> shares = of(site, month);
        if (shares.isEmpty()) {
            return Map.of(NOBODY, amount);
        }
        List<Long> parts = LargestRemainder.split(
                amount, shares.stream().map(share -> (long) share.permille()).toList());
        Map<String, Long> byGrant = new LinkedHashMap<>();
        for (int index = 0; index < parts.size(); index++) {
            byGrant.put(shares.get(index).grantId().value(), parts.get(index));
        }
        return byGrant;
    }
}
