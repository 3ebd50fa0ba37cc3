package org.bandtrail.supplystock.spend;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.grants.GrantRow;
import org.bandtrail.supplystock.grants.Grants;
import org.bandtrail.supplystock.siteshares.Payers;
import org.bandtrail.supplystock.siteshares.SiteShares;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Repository;

/** What sites cost, split between those who pay for them. The split is done on each smallest sum, then added up. */
@Repository
public class GrantSpend {
    private final SpendBooks books;
    private final LostCosts lost;
    private final SiteShares shares;
    private final Grants grants;

    GrantSpend(SpendBooks books, LostCosts lost, SiteShares shares, Grants grants) {
        this.books = books;
        this.lost = lost;
        this.shares = shares;
        this.grants = grants;
    }

    /**
     * One grant's part of one smallest sum.
     *
     * @param grantId empty for what no grant pays
     * @param siteId empty for what was lost nobody knows where
     */
    public record Part(
            String grantId,
            String siteId,
            YearMonth month,
            MaterialKind kind,
            String currency,
            Outcome outcome,
            long minor) {}

    /**
     * What was spent of a grant.
     *
     * @param spentMinor in the grant's own currency
     * @param outsideMinor of that, in months in which the grant was not good on any day
     */
    public record OfGrant(String grantId, String currency, long spentMinor, long outsideMinor) {}

    /** All parts of all sums within these months, what was lost included, split like what its site was charged. */
    public List<Part> partsWithLost(Months months) {
        Payers payers = shares.payers();
        List<Part> parts = new ArrayList<>(parts(months));
        for (LostCosts.Lost each : lost.within(months)) {
            Map<String, Long> split = each.siteId().isEmpty()
                    ? Map.of(Payers.NOBODY, each.minor())
                    : payers.split(each.siteId(), each.month(), each.minor());
            split.forEach((grant, minor) -> parts.add(
                    new Part(grant, each.siteId(), each.month(), each.kind(), each.currency(), each.outcome(), minor)));
        }
        return parts;
    }

    /** All parts of what sites were charged within these months. */
    public List<Part> parts(Months months) {
        Payers payers = shares.payers();
        List<Part> parts = new ArrayList<>();
        for (SpendCell cell : books.cells(months)) {
            payers.split(cell.siteId(), cell.month(), cell.minor())
                    .forEach((grant, minor) -> parts.add(new Part(
                            grant,
                            cell.siteId(),
                            cell.month(),
                            cell.kind(),
                            cell.currency(),
                            cell.scrapped() ? Outcome.SCRAPPED : Outcome.USED,
                            minor)));
        }
        return parts;
    }

    /** One row per grant and currency, by grant; what no grant pays stands first. */
    List<SpendRow> rows(Months months) {
        Payers payers = shares.payers();
        Map<String, SpendRow.Sums> sums = new TreeMap<>();
        Map<String, @Nullable String> names = new HashMap<>();
        for (SpendCell cell : books.cells(months)) {
            Map<String, Long> minor = payers.split(cell.siteId(), cell.month(), cell.minor());
            Map<String, Long> quantity = payers.split(cell.siteId(), cell.month(), cell.quantity());
            minor.forEach((grant, share) -> {
                String key = (grant + " " + cell.currency()).strip();
                names.put(key, grant.equals(Payers.NOBODY) ? null : grant);
                SpendRow.Sums part = cell.share(Objects.requireNonNull(quantity.get(grant)), share);
                sums.merge(key, part, SpendRow.Sums::plus);
            });
        }
        return sums.entrySet().stream()
                .map(row -> SpendRow.of(SpendBy.GRANT, row.getKey(), names.get(row.getKey()), null, row.getValue()))
                .toList();
    }

    /** What was spent of each grant, ever, in its own currency. */
    public List<OfGrant> ofGrants() {
        List<Part> parts = parts(Months.of(null, null));
        return grants.after("", Integer.MAX_VALUE).stream()
                .map(grant -> ofGrant(grant, parts))
                .toList();
    }

    private static OfGrant ofGrant(GrantRow grant, List<Part> parts) {
        long spent = 0;
        long outside = 0;
        for (Part part : parts) {
            if (part.grantId().equals(grant.grantId())
                    && part.currency().equals(grant.amount().currency())) {
                spent += part.minor();
                boolean good = !part.month().atEndOfMonth().isBefore(grant.from())
                        && !part.month().atDay(1).isAfter(grant.until());
                outside += good ? 0 : part.minor();
            }
        }
        return new OfGrant(grant.grantId(), grant.amount().currency(), spent, outside);
    }
}
