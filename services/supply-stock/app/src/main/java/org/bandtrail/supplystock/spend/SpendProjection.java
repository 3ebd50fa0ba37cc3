package org.bandtrail.supplystock.spend;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.spend.Posting.Bought;
import org.bandtrail.supplystock.spend.Posting.Holding;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Adds the charges of reels and batches up by account and tree: a page is summed first, each table takes one statement.
 */
@Component
final class SpendProjection implements Projection {
    private final JdbcClient jdbc;

    SpendProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "spend";
    }

    @Override
    public List<String> tables() {
        return List.of("spend_holding", "spend");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class);
    }

    /** Where a charge is added up. */
    private record Key(Holding holding, String account, String tree) {}

    /** Added-up millimetres or pieces and minor units. */
    private record Sum(long quantity, long minor) {
        Sum plus(Sum other) {
            return new Sum(quantity + other.quantity, minor + other.minor);
        }
    }

    /** What a page adds to a holding: bought and used millimetres or pieces, and cost in minor units. */
    private record Change(long bought, long minor, long used, boolean revalued) {
        static Change of(Posting posting) {
            Bought bought = posting.bought();
            return new Change(
                    posting.revalued().boughtDelta() + (bought == null ? 0 : bought.quantity()),
                    posting.revalued().costDelta()
                            + (bought == null ? 0 : bought.cost().minor()),
                    posting.used(),
                    posting.changesCost());
        }

        Change plus(Change other) {
            return new Change(
                    bought + other.bought, minor + other.minor, used + other.used, revalued || other.revalued);
        }
    }

    @Override
    public void apply(List<StoredEvent> page) {
        Map<Holding, Change> used = new LinkedHashMap<>();
        Map<Holding, Bought> bought = new LinkedHashMap<>();
        Map<Key, Sum> charges = new LinkedHashMap<>();
        for (StoredEvent stored : page) {
            Posting posting = Posting.of(stored.payload());
            used.merge(posting.holding(), Change.of(posting), Change::plus);
            if (posting.bought() != null) {
                bought.put(posting.holding(), posting.bought());
            }
            String tree = posting.tree();
            for (Charge charge : posting.entry().charges()) {
                charges.merge(
                        new Key(posting.holding(), charge.account(), tree),
                        new Sum(charge.quantity(), charge.minor()),
                        Sum::plus);
            }
        }
        addUsed(used);
        setBought(bought);
        addCharges(charges);
    }

    private void addUsed(Map<Holding, Change> used) {
        String[] kinds = texts(used.keySet(), Holding::kind);
        String[] ids = texts(used.keySet(), Holding::id);
        // Two statements: a row that is only added to may go down, but an inserted one must not begin below zero.
        jdbc.sql("""
                INSERT INTO spend_holding (holding, id, bought, cost_minor, used, revalued)
                SELECT page.*, 0, 0, 0, false FROM unnest(?::varchar[], ?::varchar[]) AS page
                ON CONFLICT DO NOTHING""").params(kinds, ids).update();
        jdbc.sql("""
                UPDATE spend_holding AS h SET revalued = h.revalued OR page.revalued, bought = h.bought + page.bought,
                    cost_minor = h.cost_minor + page.cost_minor, used = h.used + page.used
                FROM unnest(?::varchar[], ?::varchar[], ?::bigint[], ?::bigint[], ?::bigint[], ?::boolean[])
                    AS page (holding, id, bought, cost_minor, used, revalued)
                WHERE h.holding = page.holding AND h.id = page.id""")
                .params(
                        kinds,
                        ids,
                        numbers(used.values(), Change::bought),
                        numbers(used.values(), Change::minor),
                        numbers(used.values(), Change::used),
                        used.values().stream().map(Change::revalued).toArray(Boolean[]::new))
                .update();
    }

    private void setBought(Map<Holding, Bought> bought) {
        if (bought.isEmpty()) {
            return;
        }
        jdbc.sql("""
                UPDATE spend_holding AS h
                SET material = r.material, kind = r.kind, currency = r.currency
                FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[])
                    AS r (holding, id, material, kind, currency)
                WHERE h.holding = r.holding AND h.id = r.id""")
                .params(
                        texts(bought.keySet(), Holding::kind),
                        texts(bought.keySet(), Holding::id),
                        texts(bought.values(), each -> each.material().value()),
                        texts(bought.values(), each -> each.kind().name()),
                        texts(bought.values(), each -> each.cost().currency()))
                .update();
    }

    private void addCharges(Map<Key, Sum> charges) {
        if (charges.isEmpty()) {
            return;
        }
        jdbc.sql("""
                INSERT INTO spend AS s (holding, id, account, tree_id, quantity, cost_minor)
                SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[], ?::bigint[])
                ON CONFLICT (holding, id, account, tree_id) DO UPDATE
                SET quantity = s.quantity + EXCLUDED.quantity, cost_minor = s.cost_minor + EXCLUDED.cost_minor""")
                .params(
                        texts(charges.keySet(), key -> key.holding().kind()),
                        texts(charges.keySet(), key -> key.holding().id()),
                        texts(charges.keySet(), Key::account),
                        texts(charges.keySet(), Key::tree),
                        numbers(charges.values(), Sum::quantity),
                        numbers(charges.values(), Sum::minor))
                .update();
    }

    private static <T> String[] texts(Collection<T> rows, Function<T, String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> Long[] numbers(Collection<T> rows, Function<T, Long> column) {
        return rows.stream().map(column).toArray(Long[]::new);
    }
}
