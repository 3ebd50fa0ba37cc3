package org.bandtrail.supplystock.spend;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.bandwork.BandWork;
import org.bandtrail.supplystock.bandwork.SiteWork;
import org.springframework.stereotype.Repository;

/** Puts what sites cost beside the work done there. */
@Repository
public class SiteCosts {
    private static final YearMonth BEGINNING = YearMonth.of(1970, 1);
    private final SpendBooks books;
    private final BandWork work;

    SiteCosts(SpendBooks books, BandWork work) {
        this.books = books;
        this.work = work;
    }

    /**
     * Each site and currency, then one line for each currency over all sites that cost something in it.
     *
     * @param from first month, {@code through} last month
     * @param now bands that still hang have hung until now
     */
    List<SiteCost> between(YearMonth from, YearMonth through, Instant now) {
        YearMonth first = from.isBefore(BEGINNING) ? BEGINNING : from;
        Instant end = through.plusMonths(1).atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC);
        Instant until = end.isBefore(now) ? end : now;
        Map<String, SiteWork> done =
                work.bySite(first.atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC), until).stream()
                        .collect(Collectors.toMap(SiteWork::siteId, Function.identity()));
        List<SiteCost> costs = new ArrayList<>();
        Map<String, SiteWork> workOf = new TreeMap<>();
        Map<String, Long> totalOf = new TreeMap<>();
        for (SpendRow row : books.rows(SpendBy.SITE, Months.of(from, through), "", Integer.MAX_VALUE)) {
            String site = String.valueOf(row.siteId());
            SiteWork of = done.getOrDefault(site, SiteWork.none(site));
            costs.add(SiteCost.of(site, Money.of(row.totalMinor(), row.currency()), of));
            workOf.merge(row.currency(), of, SiteWork::plus);
            totalOf.merge(row.currency(), row.totalMinor(), Long::sum);
        }
        totalOf.forEach((currency, minor) -> costs.add(
                SiteCost.of(null, Money.of(minor, currency), workOf.getOrDefault(currency, SiteWork.none("")))));
        return costs;
    }
}
