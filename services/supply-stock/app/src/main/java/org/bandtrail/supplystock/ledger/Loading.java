package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.Columns.flags;
import static org.bandtrail.supplystock.ledger.Columns.texts;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.ledger.Fact.Key;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Loads what a page of facts touches: five statements, whatever the page holds. */
final class Loading {
    private final JdbcClient jdbc;

    Loading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The last event in the ledger, 0 if it is empty. */
    long position() {
        return jdbc.sql("SELECT position FROM ledger_state")
                .query(Long.class)
                .optional()
                .orElse(0L);
    }

    Page page(List<Fact> facts) {
        Page page = new Page();
        String closed = jdbc.sql("SELECT closed_through FROM ledger_state WHERE closed_through IS NOT NULL")
                .query(String.class)
                .optional()
                .orElse("");
        page.closedThrough = closed.isEmpty() ? null : YearMonth.parse(closed);
        jdbc.sql("SELECT year, method FROM ledger_method").query(row -> {
            page.methods.put(row.getInt("year"), CostMethod.valueOf(row.getString("method")));
        });
        new MembershipTable(jdbc).load(page.crews, facts);
        Set<Key> holdings =
                new LinkedHashSet<>(facts.stream().map(Fact::holding).toList());
        if (!holdings.isEmpty()) {
            known(page, holdings);
            Set<Pool.Key> pools = pools(page, facts);
            places(page, holdings, pools);
            layers(page, pools);
            uses(page, holdings);
        }
        return page;
    }

    private void known(Page page, Set<Key> holdings) {
        jdbc.sql("""
            SELECT h.* FROM unnest(?::varchar[], ?::varchar[]) AS t (holding, id)
            JOIN ledger_holding h USING (holding, id)\
            """)
                .params(texts(holdings, Key::kind), texts(holdings, Key::id))
                .query(row -> {
                    page.known.put(
                            new Key(row.getString("holding"), row.getString("id")),
                            new Known(
                                    row.getString("material"),
                                    row.getString("kind"),
                                    row.getString("currency"),
                                    row.getString("origin")));
                });
    }

    private static Set<Pool.Key> pools(Page page, List<Fact> facts) {
        Set<Pool.Key> pools = new LinkedHashSet<>();
        for (Fact fact : facts) {
            Known known = page.known.get(fact.holding());
            if (!fact.holding().isReel() && fact.bought() != null) {
                pools.add(Known.from(fact.bought(), "").pool());
            } else if (!fact.holding().isReel() && known != null) {
                pools.add(known.pool());
            }
        }
        return pools;
    }

    /** What is where of a key; all places of what was not received yet, the places in stock of everything else. */
    private record Wanted(String holding, String id, boolean whole) {}

    private void places(Page page, Set<Key> holdings, Set<Pool.Key> pools) {
        Map<String, Pool.Key> byId = new LinkedHashMap<>();
        pools.forEach(pool -> byId.put(pool.id(), pool));
        List<Wanted> wanted = new ArrayList<>();
        holdings.forEach(key -> {
            boolean unknown = !page.known.containsKey(key);
            if (key.isReel() || unknown) {
                wanted.add(new Wanted(key.kind(), key.id(), unknown));
            }
        });
        byId.keySet().forEach(id -> wanted.add(new Wanted("pool", id, false)));
        jdbc.sql("""
            SELECT p.holding, p.id, p.place, p.quantity, p.value_minor
            FROM unnest(?::varchar[], ?::varchar[], ?::boolean[]) AS t (holding, id, whole)
            JOIN ledger_place p USING (holding, id) WHERE p.stock OR t.whole\
            """)
                .params(texts(wanted, Wanted::holding), texts(wanted, Wanted::id), flags(wanted, Wanted::whole))
                .query(row -> {
                    Pool.Key pool = row.getString("holding").equals("pool") ? byId.get(row.getString("id")) : null;
                    Stock stock = pool == null
                            ? page.stock(new Key(row.getString("holding"), row.getString("id")))
                            : page.pool(pool).stock;
                    Stock.Cell cell = stock.at(Place.parse(row.getString("place")));
                    cell.quantity = row.getLong("quantity");
                    cell.minor = row.getLong("value_minor");
                    cell.stored = true;
                });
    }

    private void layers(Page page, Set<Pool.Key> pools) {
        Map<Pool.Key, List<Pool.Layer>> layers = new LinkedHashMap<>();
        jdbc.sql("""
            SELECT l.* FROM unnest(?::varchar[], ?::varchar[]) AS t (material, currency)
            JOIN ledger_layer l USING (material, currency) ORDER BY material, currency, seq\
            """)
                .params(texts(pools, Pool.Key::material), texts(pools, Pool.Key::currency))
                .query(row -> {
                    layers.computeIfAbsent(
                                    new Pool.Key(row.getString("material"), row.getString("currency")),
                                    unused -> new ArrayList<>())
                            .add(new Pool.Layer(
                                    row.getString("batch"), row.getLong("left_quantity"), row.getLong("left_minor")));
                });
        layers.forEach((key, all) -> page.pool(key).load(all));
        jdbc.sql("""
            SELECT p.* FROM unnest(?::varchar[], ?::varchar[]) AS t (material, currency)
            JOIN ledger_payer p USING (material, currency)\
            """)
                .params(texts(pools, Pool.Key::material), texts(pools, Pool.Key::currency))
                .query(row -> {
                    page.pool(new Pool.Key(row.getString("material"), row.getString("currency")))
                            .payers
                            .pays(row.getString("account"), row.getLong("quantity"), row.getLong("minor"));
                });
    }

    private void uses(Page page, Set<Key> holdings) {
        List<Key> unknown =
                holdings.stream().filter(key -> !page.known.containsKey(key)).toList();
        jdbc.sql("""
            SELECT l.holding, l.id, l.account, l.tree_id, l.person_id, l.crew_id, l.what,
                sum(l.account_quantity) AS quantity
            FROM unnest(?::varchar[], ?::varchar[]) AS t (holding, id)
            JOIN ledger_line l USING (holding, id)
            WHERE l.account IS NOT NULL
            GROUP BY 1, 2, 3, 4, 5, 6, 7 ORDER BY 1, 2, 3, 4, 5, 6, 7\
            """).params(texts(unknown, Key::kind), texts(unknown, Key::id)).query(row -> {
            page.used(
                    new Key(row.getString("holding"), row.getString("id")),
                    new LateUse(
                            row.getString("account"),
                            row.getString("tree_id"),
                            row.getString("person_id"),
                            row.getString("crew_id"),
                            row.getString("what"),
                            row.getLong("quantity")));
        });
    }
}
