package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.Columns.flags;
import static org.bandtrail.supplystock.ledger.Columns.numbers;
import static org.bandtrail.supplystock.ledger.Columns.texts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.ledger.Fact.Key;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes a posted page: each table takes one statement, two where rows are replaced. */
final class Writing {
    private final JdbcClient jdbc;

    Writing(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void write(Page page, long position) {
        if (!page.rows.isEmpty()) {
            lines(page.rows);
            places(page);
            named(page.named);
            pools(page.pools);
            new SumsWriting(jdbc).write(page.rows);
        }
        policies(page);
        new MembershipTable(jdbc).write(page.crews.stays());
        jdbc.sql("""
            INSERT INTO ledger_state (one, position, closed_through) VALUES (true, ?, ?::varchar)
            ON CONFLICT (one) DO UPDATE
            SET position = EXCLUDED.position, closed_through = EXCLUDED.closed_through\
            """)
                .param(position)
                .param(page.closedThrough == null ? null : page.closedThrough.toString())
                .update();
    }

    private void lines(List<LedgerRow> rows) {
        jdbc.sql("""
            INSERT INTO ledger_line (position, step, holding, id, material, kind, currency, what, adjusts,
                note, source, target, quantity, out_minor, in_minor, account, account_quantity,
                account_minor, site_id, tree_id, person_id, crew_id, by_person, happened_at, recorded_at,
                period)
            SELECT * FROM unnest(?::bigint[], ?::integer[], %1$s, %1$s, %1$s, %1$s, %1$s, %1$s, ?::boolean[],
                %1$s, %1$s, %1$s, ?::bigint[], ?::bigint[], ?::bigint[], %1$s, ?::bigint[], ?::bigint[],
                %1$s, %1$s, %1$s, %1$s, %1$s, ?::timestamptz[], ?::timestamptz[], %1$s)""".formatted("?::varchar[]"))
                .params(
                        numbers(rows, row -> row.fact().position()),
                        numbers(rows, LedgerRow::step),
                        texts(rows, row -> row.fact().holding().kind()),
                        texts(rows, row -> row.fact().holding().id()),
                        texts(rows, row -> row.of().material()),
                        texts(rows, row -> row.of().kind()),
                        texts(rows, row -> row.of().currency()),
                        texts(rows, LedgerRow::what),
                        flags(rows, LedgerRow::adjusts),
                        texts(rows, row -> row.fact().note()),
                        texts(rows, LedgerRow::source),
                        texts(rows, LedgerRow::target),
                        numbers(rows, LedgerRow::quantity),
                        numbers(rows, LedgerRow::out),
                        numbers(rows, LedgerRow::in),
                        texts(rows, LedgerRow::account),
                        numbers(rows, LedgerRow::used),
                        numbers(rows, LedgerRow::paid),
                        texts(rows, LedgerRow::site),
                        texts(rows, LedgerRow::tree),
                        texts(rows, LedgerRow::person),
                        texts(rows, LedgerRow::crew),
                        texts(rows, row -> row.fact().entry().by().value()),
                        texts(rows, LedgerRow::happenedAt),
                        texts(rows, LedgerRow::recordedAt),
                        texts(rows, LedgerRow::period))
                .update();
    }

    /** What a page adds at one place. */
    private record Added(String holding, String id, Place place, Stock.Cell cell) {}

    private void places(Page page) {
        List<Added> added = new ArrayList<>();
        page.stocks.forEach((key, stock) -> collect(added, key.kind(), key.id(), stock));
        page.pools.forEach((key, pool) -> collect(added, "pool", key.id(), pool.stock));
        jdbc.sql("""
            INSERT INTO ledger_place AS p (holding, id, place, stock, quantity, value_minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::boolean[], ?::bigint[],
                ?::bigint[])
            ON CONFLICT (holding, id, place) DO UPDATE SET quantity = p.quantity + EXCLUDED.quantity,
                value_minor = p.value_minor + EXCLUDED.value_minor\
            """)
                .params(
                        texts(added, Added::holding),
                        texts(added, Added::id),
                        texts(added, each -> each.place().toString()),
                        flags(added, each -> each.place().kind().inStock()),
                        numbers(added, each -> each.cell().addedQuantity),
                        numbers(added, each -> each.cell().addedMinor))
                .update();
    }

    private static void collect(List<Added> added, String holding, String id, Stock stock) {
        stock.cells.forEach((place, cell) -> added.add(new Added(holding, id, place, cell)));
        stock.field.forEach((place, cell) -> added.add(new Added(holding, id, place, cell)));
        added.removeIf(each -> each.cell().stored && each.cell().addedQuantity == 0 && each.cell().addedMinor == 0);
    }

    private void named(Map<Key, Known> named) {
        List<Map.Entry<Key, Known>> all = List.copyOf(named.entrySet());
        jdbc.sql("""
            INSERT INTO ledger_holding (holding, id, material, kind, currency, origin)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::varchar[])\
            """)
                .params(
                        texts(all, each -> each.getKey().kind()),
                        texts(all, each -> each.getKey().id()),
                        texts(all, each -> each.getValue().material()),
                        texts(all, each -> each.getValue().kind()),
                        texts(all, each -> each.getValue().currency()),
                        texts(all, each -> each.getValue().origin()))
                .update();
    }

    private record LayerAt(Pool.Key pool, int seq, Pool.Layer layer) {}

    private record PaidBy(Pool.Key pool, String account, Payers.Paid paid) {}

    private void pools(Map<Pool.Key, Pool> pools) {
        List<LayerAt> layers = new ArrayList<>();
        List<PaidBy> payers = new ArrayList<>();
        pools.forEach((key, pool) -> {
            List<Pool.Layer> left = pool.layers();
            for (int seq = 0; seq < left.size(); seq++) {
                layers.add(new LayerAt(key, seq, left.get(seq)));
            }
            pool.payers.all().forEach((account, paid) -> payers.add(new PaidBy(key, account, paid)));
        });
        layers(pools.keySet(), layers);
        payers(payers);
    }

    private void layers(Set<Pool.Key> pools, List<LayerAt> layers) {
        jdbc.sql("""
            DELETE FROM ledger_layer l USING unnest(?::varchar[], ?::varchar[]) AS t (material, currency)
            WHERE l.material = t.material AND l.currency = t.currency\
            """)
                .params(texts(pools, Pool.Key::material), texts(pools, Pool.Key::currency))
                .update();
        jdbc.sql("""
            INSERT INTO ledger_layer (material, currency, seq, batch, left_quantity, left_minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::integer[], ?::varchar[], ?::bigint[],
                ?::bigint[])\
            """)
                .params(
                        texts(layers, each -> each.pool().material()),
                        texts(layers, each -> each.pool().currency()),
                        numbers(layers, LayerAt::seq),
                        texts(layers, each -> each.layer().batch()),
                        numbers(layers, each -> each.layer().quantity()),
                        numbers(layers, each -> each.layer().minor()))
                .update();
    }

    private void payers(List<PaidBy> payers) {
        jdbc.sql("""
            INSERT INTO ledger_payer (material, currency, account, quantity, minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[], ?::bigint[])
            ON CONFLICT (material, currency, account) DO UPDATE
            SET quantity = EXCLUDED.quantity, minor = EXCLUDED.minor\
            """)
                .params(
                        texts(payers, each -> each.pool().material()),
                        texts(payers, each -> each.pool().currency()),
                        texts(payers, PaidBy::account),
                        numbers(payers, each -> each.paid().quantity()),
                        numbers(payers, each -> each.paid().minor()))
                .update();
    }

    private void policies(Page page) {
        page.methods.forEach(
                (year, method) -> jdbc.sql("""
                    INSERT INTO ledger_method (year, method) VALUES (?, ?)
                    ON CONFLICT (year) DO UPDATE SET method = EXCLUDED.method\
                    """).params(year, method.name()).update());
    }
}
