package org.bandtrail.supplystock.ledger;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.costpolicies.CostPolicyEvent;
import org.bandtrail.supplystock.holdings.Line.Bought;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.ledger.Fact.Key;
import org.bandtrail.supplystock.periods.Period;
import org.bandtrail.supplystock.periods.PeriodEvent;
import org.jspecify.annotations.Nullable;

/**
 * The part of the books that a page of events touches, while it is posted: loaded once, written once. Everything here
 * is a pure function of what was loaded and the events, so a rebuild gives the same lines.
 */
final class Page {
    /** What accounts used of one holding before its receipt, added up. */
    private record UseKey(String account, String tree, String person, String crew, String what) {}

    @Nullable
    YearMonth closedThrough;

    final TreeMap<Integer, CostMethod> methods = new TreeMap<>();
    final Membership crews = new Membership();
    final Map<Key, Known> known = new HashMap<>();
    final Map<Key, Known> named = new LinkedHashMap<>();
    final Map<Key, Stock> stocks = new LinkedHashMap<>();
    final Map<Pool.Key, Pool> pools = new LinkedHashMap<>();
    final List<LedgerRow> rows = new ArrayList<>();
    private final Map<Key, Map<UseKey, Long>> uses = new HashMap<>();

    Stock stock(Key holding) {
        return stocks.computeIfAbsent(holding, unused -> new Stock());
    }

    Pool pool(Pool.Key key) {
        return pools.computeIfAbsent(key, unused -> new Pool(key.currency(), List.of()));
    }

    void used(Key holding, LateUse use) {
        uses.computeIfAbsent(holding, unused -> new LinkedHashMap<>())
                .merge(
                        new UseKey(use.account(), use.tree(), use.person(), use.crew(), use.what()),
                        use.quantity(),
                        Long::sum);
    }

    void month(PeriodEvent event) {
        switch (event) {
            case PeriodEvent.Closed closed -> closedThrough = closed.month();
            case PeriodEvent.Reopened reopened -> closedThrough = reopened.closedThrough();
            case PeriodEvent.CheckSigned signed -> leave(signed);
            case PeriodEvent.ReopeningAsked asked -> leave(asked);
            case PeriodEvent.ReopeningDropped dropped -> leave(dropped);
        }
    }

    /** What people sign and ask about a month changes no entry. */
    private static void leave(PeriodEvent event) {
        Objects.requireNonNull(event.month());
    }

    void policy(CostPolicyEvent event) {
        switch (event) {
            case CostPolicyEvent.Set set -> methods.put(set.year(), set.method());
        }
    }

    void post(Fact fact) {
        Key holding = fact.holding();
        YearMonth month = Period.postsTo(fact.entry().occurred().happened(), closedThrough);
        Known before = known.getOrDefault(holding, Known.NOT_YET);
        Known now = before;
        if (fact.bought() != null) {
            now = named(holding, fact.bought(), fact.entry().moves().getFirst().source());
        }
        Stock own = stock(holding);
        boolean pooled = !holding.isReel() && now.received();
        Stock values = pooled ? pool(now.pool()).stock : own;
        Lines lines = new Lines(fact, now, month.toString(), crews, values, pooled ? own : null);
        if (pooled) {
            pooled(fact, now, own, lines, method(month));
        } else if (fact.bought() != null) {
            new OwnCost(fact, now, own, lines).receipt(lateUses(holding));
        } else {
            new OwnCost(fact, now, own, lines).post();
        }
        rows.addAll(lines.written());
        if (!now.received()) {
            remember(holding, lines.written());
        }
    }

    private void pooled(Fact fact, Known now, Stock own, Lines lines, CostMethod method) {
        PoolCost cost = new PoolCost(fact, pool(now.pool()), lines, method);
        if (fact.bought() != null) {
            cost.receipt(LateReceipt.of(own, lateUses(fact.holding())));
        } else {
            cost.post();
        }
    }

    private Known named(Key holding, Bought bought, Place source) {
        Known now = Known.from(bought, source.toString());
        known.put(holding, now);
        named.put(holding, now);
        return now;
    }

    private CostMethod method(YearMonth month) {
        Map.Entry<Integer, CostMethod> last = methods.floorEntry(month.getYear());
        return last == null ? CostMethod.DEFAULT : last.getValue();
    }

    private void remember(Key holding, List<LedgerRow> written) {
        for (LedgerRow row : written) {
            if (row.account() != null) {
                used(holding, new LateUse(row.account(), row.tree(), row.person(), row.crew(), row.what(), row.used()));
            }
        }
    }

    private List<LateUse> lateUses(Key holding) {
        List<LateUse> all = new ArrayList<>();
        Map<UseKey, Long> known = uses.remove(holding);
        if (known != null) {
            known.forEach((use, quantity) ->
                    all.add(new LateUse(use.account(), use.tree(), use.person(), use.crew(), use.what(), quantity)));
        }
        // In one order, whether they were loaded or are of this page: who gets the last cent must not depend on pages.
        all.sort(Comparator.comparing(LateUse::toString));
        return all;
    }
}
