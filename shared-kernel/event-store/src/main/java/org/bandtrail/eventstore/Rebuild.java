package org.bandtrail.eventstore;

import org.axonframework.eventhandling.GlobalSequenceTrackingToken;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Rebuilds one projection in a schema of its own. The projection's SQL names no schema, so the search path decides
 * which copy it writes. The last pages are applied while the claim of the live position is held, then the tables are
 * swapped.
 */
final class Rebuild {
    private final Projector projector;
    private final EventLog log;
    private final TokenStore tokens;
    private final TransactionTemplate transactions;
    private final JdbcClient jdbc;
    private final int page;
    private final String schema;
    private long position;

    Rebuild(
            Projector projector,
            EventLog log,
            TokenStore tokens,
            TransactionTemplate transactions,
            JdbcClient jdbc,
            int page) {
        this.projector = projector;
        this.log = log;
        this.tokens = tokens;
        this.transactions = transactions;
        this.jdbc = jdbc;
        this.page = page;
        this.schema = "rebuild_" + projector.name().replace('-', '_');
    }

    void run() {
        transactions.executeWithoutResult(status -> copyTables());
        boolean more = true;
        while (more) {
            more = Boolean.TRUE.equals(transactions.execute(status -> applyPage()));
        }
        transactions.executeWithoutResult(status -> swap());
    }

    private void copyTables() {
        execute("DROP SCHEMA IF EXISTS " + schema + " CASCADE");
        execute("CREATE SCHEMA " + schema);
        for (String table : projector.projection().tables()) {
            execute("CREATE TABLE %s.%s (LIKE public.%s INCLUDING ALL)".formatted(schema, table, table));
        }
    }

    private boolean applyPage() {
        execute("SET LOCAL search_path = " + schema + ", public");
        EventLog.Page next = log.after(position, projector.storedNames(), page);
        if (!next.events().isEmpty()) {
            projector.projection().apply(next.events());
        }
        boolean more = next.end() > position;
        position = next.end();
        return more;
    }

    /**
     * The live position is locked by fetching it, so the live projector waits here and then goes on from the new one.
     */
    private void swap() {
        tokens.fetchToken(projector.name(), 0);
        while (applyPage()) {
            // the few events that came since the last page
        }
        execute("SET LOCAL search_path = public");
        for (String table : projector.projection().tables()) {
            execute("DROP TABLE public." + table + " CASCADE");
            execute("ALTER TABLE %s.%s SET SCHEMA public".formatted(schema, table));
        }
        execute("DROP SCHEMA " + schema + " CASCADE");
        tokens.storeToken(new GlobalSequenceTrackingToken(position), projector.name(), 0);
    }

    private void execute(String sql) {
        jdbc.sql(sql).update();
    }
}
