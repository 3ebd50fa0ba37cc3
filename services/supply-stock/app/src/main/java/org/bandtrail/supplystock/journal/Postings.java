package org.bandtrail.supplystock.journal;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Makes the postings of a month from the lines of the ledger. Each line takes from its source what it gives to its target
 * and its account; the source is credited, the other two debited. What stays within one of our accounts falls away.
 */
@Repository
class Postings {
    /** Places whose content is stock, as a place writes its kind; all others in the field hold nothing of value. */
    private static final String CLASS = """
            CASE split_part(%1$s, ':', 1)
                WHEN 'supplier' THEN 'supplier'
                WHEN 'slit' THEN 'slit'
                WHEN 'set-aside' THEN 'stock:' || kind WHEN 'depot' THEN 'stock:' || kind
                WHEN 'in-transit' THEN 'stock:' || kind WHEN 'vehicle' THEN 'stock:' || kind
                WHEN 'crew' THEN 'stock:' || kind WHEN 'missing' THEN 'stock:' || kind
                ELSE coalesce('place:' || split_part(%1$s, ':', 1), 'nowhere') END""";

    private final JdbcClient jdbc;

    Postings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The postings of a month by currency, reason and account, none of them zero. */
    List<Posting> of(YearMonth month) {
        Map<List<String>, Long> sums = new TreeMap<>(Postings::compare);
        jdbc.sql("""
                        SELECT currency, what, %s AS source, %s AS target,
                               CASE WHEN account LIKE 'slit:%%' THEN 'slit' ELSE account END AS account,
                               sum(out_minor)::bigint AS out_minor, sum(in_minor)::bigint AS in_minor,
                               sum(account_minor)::bigint AS account_minor
                        FROM ledger_line WHERE period = :period AND currency <> ''
                        GROUP BY 1, 2, 3, 4, 5""".formatted(CLASS.formatted("source"), CLASS.formatted("target")))
                .param("period", month.toString())
                .query(row -> {
                    String currency = row.getString("currency");
                    String what = row.getString("what");
                    add(sums, currency, what, row.getString("source"), -row.getLong("out_minor"));
                    add(sums, currency, what, row.getString("target"), row.getLong("in_minor"));
                    if (row.getString("account") != null) {
                        add(sums, currency, what, row.getString("account"), row.getLong("account_minor"));
                    }
                });
        List<Posting> postings = new ArrayList<>();
        sums.forEach((key, minor) -> {
            if (minor != 0) {
                postings.add(new Posting(key.get(0), key.get(1), key.get(2), minor));
            }
        });
        return postings;
    }

    private static void add(Map<List<String>, Long> sums, String currency, String what, String ours, long minor) {
        sums.merge(List.of(currency, what, ours), minor, Long::sum);
    }

    private static int compare(List<String> one, List<String> other) {
        for (int part = 0; part < one.size(); part++) {
            int order = one.get(part).compareTo(other.get(part));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
