package org.bandtrail.supplystock.receiving;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Proposes identities for what a supplier brings: the supplier's identity and a running number, such as
 * {@code HOLM-0042}. It is only a proposal: people may write their own, and whoever takes a number first has it.
 */
@Repository
class ReelNumbers {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final int LONGEST_PREFIX = 30;
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    ReelNumbers(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** The next free numbers, in order. Waits for deliveries recorded a moment ago. */
    List<String> next(SupplierId supplier, int count) {
        if (count == 0) {
            return List.of();
        }
        projectors.getObject().caughtUp(PATIENCE);
        String prefix = prefix(supplier);
        long last = jdbc.sql("""
                        SELECT substring(id FROM '-([0-9]{1,9})$')::bigint FROM delivered_holding
                        WHERE supplier_id = ? AND left(id, length(?)) = ? AND id ~ '-[0-9]{1,9}$'
                        ORDER BY substring(id FROM '-([0-9]{1,9})$')::bigint DESC NULLS LAST LIMIT 1""")
                .params(supplier.value(), prefix, prefix)
                .query(Long.class)
                .optional()
                .orElse(0L);
        List<String> numbers = new ArrayList<>();
        for (int index = 1; index <= count; index++) {
            numbers.add(prefix + String.format(Locale.ROOT, "%04d", last + index));
        }
        return numbers;
    }

    private static String prefix(SupplierId supplier) {
        String name = supplier.value();
        return (name.length() > LONGEST_PREFIX ? name.substring(0, LONGEST_PREFIX) : name) + "-";
    }
}
