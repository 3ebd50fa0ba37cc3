package org.bandtrail.supplystock.ledger;

import static org.bandtrail.supplystock.ledger.Columns.numbers;
import static org.bandtrail.supplystock.ledger.Columns.texts;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Adds the lines of a page up and to the three tables of sums. */
final class SumsWriting {
    private record Item(String material, String kind, String currency) implements Comparable<Item> {
        @Override
        public int compareTo(Item other) {
            return toString().compareTo(other.toString());
        }
    }

    private record Slot(String side, String slot, Item item, String happened, String recorded) {}

    private record Account(LedgerRow of, String account) {
        /** What the sum is by; its text form orders and names it. */
        String key() {
            return String.join(
                    "|",
                    of.period(),
                    account,
                    of.tree(),
                    of.of().material(),
                    of.of().currency(),
                    of.what(),
                    of.person(),
                    of.crew());
        }
    }

    /** In, out and adjusted, each quantity and minor units. */
    private static final class Turnover {
        final long[] in = new long[2];
        final long[] out = new long[2];
        final long[] adjusted = new long[2];
    }

    private record Place(String period, Item item, String place) {}

    private final JdbcClient jdbc;

    SumsWriting(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void write(List<LedgerRow> rows) {
        Map<String, Map.Entry<Place, Turnover>> trial = new TreeMap<>();
        Map<String, Map.Entry<Slot, long[]>> days = new TreeMap<>();
        Map<String, Map.Entry<Account, long[]>> accounts = new TreeMap<>();
        for (LedgerRow row : rows) {
            Item item = new Item(row.of().material(), row.of().kind(), row.of().currency());
            side(trial, days, row, item, row.source(), -row.quantity(), -row.out());
            side(trial, days, row, item, row.target(), row.quantity(), row.in());
            String account = row.account();
            if (account != null) {
                day(
                        days,
                        new Slot("account", account, item, row.happenedDay(), row.recordedDay()),
                        row.used(),
                        row.paid());
                Account key = new Account(row, account);
                add(
                        accounts.computeIfAbsent(key.key(), unused -> Map.entry(key, new long[2]))
                                .getValue(),
                        row.used(),
                        row.paid());
            }
        }
        trial(trial.values().stream().toList());
        days(days.values().stream().toList());
        accounts(accounts.values().stream().toList());
    }

    private static void side(
            Map<String, Map.Entry<Place, Turnover>> trial,
            Map<String, Map.Entry<Slot, long[]>> days,
            LedgerRow row,
            Item item,
            @Nullable String place,
            long quantity,
            long minor) {
        if (place == null) {
            return;
        }
        String slot = LedgerRow.slot(place);
        Place key = new Place(row.period(), item, slot);
        Turnover sums = trial.computeIfAbsent(key.toString(), unused -> Map.entry(key, new Turnover()))
                .getValue();
        boolean comes = place.equals(row.target());
        if (row.adjusts()) {
            add(sums.adjusted, quantity, minor);
        } else if (comes) {
            add(sums.in, quantity, minor);
        } else {
            add(sums.out, -quantity, -minor);
        }
        day(days, new Slot("place", slot, item, row.happenedDay(), row.recordedDay()), quantity, minor);
    }

    private static void day(Map<String, Map.Entry<Slot, long[]>> days, Slot slot, long quantity, long minor) {
        add(
                days.computeIfAbsent(slot.toString(), unused -> Map.entry(slot, new long[2]))
                        .getValue(),
                quantity,
                minor);
    }

    private static void add(long[] sum, long quantity, long minor) {
        sum[0] += quantity;
        sum[1] += minor;
    }

    private void trial(List<Map.Entry<Place, Turnover>> rows) {
        jdbc.sql("""
            INSERT INTO ledger_trial AS t (period, material, kind, currency, place, in_quantity, in_minor,
                out_quantity, out_minor, adjusted_quantity, adjusted_minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[])
            ON CONFLICT (period, material, currency, place) DO UPDATE
            SET in_quantity = t.in_quantity + EXCLUDED.in_quantity,
                in_minor = t.in_minor + EXCLUDED.in_minor,
                out_quantity = t.out_quantity + EXCLUDED.out_quantity,
                out_minor = t.out_minor + EXCLUDED.out_minor,
                adjusted_quantity = t.adjusted_quantity + EXCLUDED.adjusted_quantity,
                adjusted_minor = t.adjusted_minor + EXCLUDED.adjusted_minor\
            """)
                .params(
                        texts(rows, row -> row.getKey().period()),
                        texts(rows, row -> row.getKey().item().material()),
                        texts(rows, row -> row.getKey().item().kind()),
                        texts(rows, row -> row.getKey().item().currency()),
                        texts(rows, row -> row.getKey().place()),
                        numbers(rows, row -> row.getValue().in[0]),
                        numbers(rows, row -> row.getValue().in[1]),
                        numbers(rows, row -> row.getValue().out[0]),
                        numbers(rows, row -> row.getValue().out[1]),
                        numbers(rows, row -> row.getValue().adjusted[0]),
                        numbers(rows, row -> row.getValue().adjusted[1]))
                .update();
    }

    private void days(List<Map.Entry<Slot, long[]>> rows) {
        jdbc.sql("""
            INSERT INTO ledger_day AS d (side, slot, material, kind, currency, happened_day, recorded_day,
                quantity, minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::date[], ?::date[], ?::bigint[], ?::bigint[])
            ON CONFLICT (side, slot, material, currency, happened_day, recorded_day) DO UPDATE
            SET quantity = d.quantity + EXCLUDED.quantity, minor = d.minor + EXCLUDED.minor\
            """)
                .params(
                        texts(rows, row -> row.getKey().side()),
                        texts(rows, row -> row.getKey().slot()),
                        texts(rows, row -> row.getKey().item().material()),
                        texts(rows, row -> row.getKey().item().kind()),
                        texts(rows, row -> row.getKey().item().currency()),
                        texts(rows, row -> row.getKey().happened()),
                        texts(rows, row -> row.getKey().recorded()),
                        numbers(rows, row -> row.getValue()[0]),
                        numbers(rows, row -> row.getValue()[1]))
                .update();
    }

    private void accounts(List<Map.Entry<Account, long[]>> rows) {
        jdbc.sql("""
            INSERT INTO ledger_account AS a (period, account, site_id, tree_id, material, kind, currency,
                what, person_id, crew_id, quantity, minor)
            SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[], ?::bigint[])
            ON CONFLICT (period, account, tree_id, material, currency, what, person_id, crew_id) DO UPDATE
            SET quantity = a.quantity + EXCLUDED.quantity, minor = a.minor + EXCLUDED.minor\
            """)
                .params(
                        texts(rows, row -> row.getKey().of().period()),
                        texts(rows, row -> row.getKey().account()),
                        texts(rows, row -> row.getKey().of().site()),
                        texts(rows, row -> row.getKey().of().tree()),
                        texts(rows, row -> row.getKey().of().of().material()),
                        texts(rows, row -> row.getKey().of().of().kind()),
                        texts(rows, row -> row.getKey().of().of().currency()),
                        texts(rows, row -> row.getKey().of().what()),
                        texts(rows, row -> row.getKey().of().person()),
                        texts(rows, row -> row.getKey().of().crew()),
                        numbers(rows, row -> row.getValue()[0]),
                        numbers(rows, row -> row.getValue()[1]))
                .update();
    }
}
