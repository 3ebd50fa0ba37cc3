package org.bandtrail.supplystock.budgets;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.purchases.OnOrder;
import org.bandtrail.supplystock.siteshares.Payers;
import org.bandtrail.supplystock.siteshares.SiteShares;
import org.bandtrail.supplystock.spend.GrantSpend;
import org.bandtrail.supplystock.spend.Months;
import org.bandtrail.supplystock.spend.Outcome;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Puts budgets beside what was spent and what is committed. Both come in parts of one grant, one site and one kind, so
 * every budget adds up whole parts and nothing is split twice.
 */
@Component
class Standings {
    private final GrantSpend spend;
    private final OnOrder orders;
    private final SiteShares shares;
    private final Items items;

    Standings(GrantSpend spend, OnOrder orders, SiteShares shares, Items items) {
        this.spend = spend;
        this.orders = orders;
        this.shares = shares;
        this.items = items;
    }

    /** A part of what is ordered; empty site or grant where the order names none. */
    private record Ordered(
            String grantId, String siteId, @Nullable MaterialKind kind, String currency, long minor) {}

    /**
     * How these budgets stand.
     *
     * @param running the month that runs now, whose shares split what is ordered for a site
     */
    List<BudgetStanding> of(List<BudgetRow> budgets, YearMonth running) {
        if (budgets.isEmpty()) {
            return List.of();
        }
        YearMonth first =
                budgets.stream().map(BudgetRow::from).min(YearMonth::compareTo).orElseThrow();
        YearMonth last = budgets.stream()
                .map(BudgetRow::through)
                .max(YearMonth::compareTo)
                .orElseThrow();
        List<GrantSpend.Part> spent = spend.partsWithLost(Months.of(first, last));
        List<Ordered> ordered = ordered(running);
        List<BudgetStanding> standings = new ArrayList<>();
        for (BudgetRow budget : budgets) {
            Map<Outcome, Long> sums = spent.stream()
                    .filter(part -> !part.month().isBefore(budget.from())
                            && !part.month().isAfter(budget.through())
                            && covers(budget, part.grantId(), part.siteId(), part.kind(), part.currency()))
                    .collect(Collectors.groupingBy(
                            GrantSpend.Part::outcome, Collectors.summingLong(GrantSpend.Part::minor)));
            long committed = budget.through().isBefore(running)
                    ? 0
                    : ordered.stream()
                            .filter(part -> covers(budget, part.grantId(), part.siteId(), part.kind(), part.currency()))
                            .mapToLong(Ordered::minor)
                            .sum();
            standings.add(BudgetStanding.of(budget, sums, committed));
        }
        return standings;
    }

    private static boolean covers(
            BudgetRow budget, String grant, String site, @Nullable MaterialKind kind, String currency) {
        return (budget.grantId() == null || budget.grantId().equals(grant))
                && (budget.siteId() == null || budget.siteId().equals(site))
                && (budget.kind() == null || budget.kind() == kind)
                && budget.amount().currency().equals(currency);
    }

    /** What is ordered: to the grant the order names, else split by the shares of its site, else to no grant. */
    private List<Ordered> ordered(YearMonth running) {
        Map<String, MaterialKind> kinds =
                new HashMap<>(items.all().stream().collect(Collectors.toMap(ItemRow::materialCode, ItemRow::kind)));
        Payers payers = shares.payers();
        List<Ordered> parts = new ArrayList<>();
        for (OnOrder.Committed line : orders.committed()) {
            String site = line.siteId() == null ? "" : line.siteId();
            MaterialKind kind = kinds.get(line.materialCode());
            Map<String, Long> byGrant = line.grant() != null
                    ? Map.of(line.grant(), line.minor())
                    : payers.split(site, running, line.minor());
            byGrant.forEach((grant, minor) -> parts.add(new Ordered(grant, site, kind, line.currency(), minor)));
        }
        return parts;
    }
}
