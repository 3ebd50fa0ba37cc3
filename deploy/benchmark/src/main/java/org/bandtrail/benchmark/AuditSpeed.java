package org.bandtrail.benchmark;

import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The audit over HTTP against a plain SQL sum of the same moves. The sum is the floor: it adds up two columns of one table
 * and compares nothing.
 */
final class AuditSpeed {
    private final Browser browser;
    private final JdbcClient jdbc;
    private final long moves;

    AuditSpeed(ApplicationContext supplyStock, Browser browser) {
        this.browser = browser;
        this.jdbc = JdbcClient.create(supplyStock.getBean(DataSource.class));
        this.moves =
                jdbc.sql("SELECT count(*) FROM reel_history").query(Long.class).single();
    }

    /** Every row counted again, all laws stated on them, and each kept sum compared. */
    Interleaved.Result recounted(int turns) throws Exception {
        return new Interleaved(turns)
                .compare(
                        "audit of %,d moves, every row counted again (moves per s)".formatted(moves),
                        this::plainSum,
                        () -> audited("/audit?recount=true"));
    }

    /** The audit as it is shown: from sums that are kept. */
    Interleaved.Result kept(int turns) throws Exception {
        return new Interleaved(turns)
                .compare(
                        "audit of %,d moves, from kept sums (moves per s)".formatted(moves),
                        this::plainSum,
                        () -> audited("/audit"));
    }

    private long plainSum() {
        jdbc.sql("SELECT sum(quantity), sum(cost_minor) FROM reel_history")
                .query((row, number) -> row.getLong(1) + row.getLong(2))
                .single();
        return moves;
    }

    private long audited(String path) throws Exception {
        if (!browser.get(path).contains("\"zero\":true")) {
            throw new IllegalStateException("The audit does not read zero; what is measured would be wrong.");
        }
        return moves;
    }
}
