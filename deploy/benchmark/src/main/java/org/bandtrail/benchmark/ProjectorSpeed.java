package org.bandtrail.benchmark;

import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.sql.DataSource;
import org.bandtrail.eventstore.EventLog;
import org.bandtrail.eventstore.Projectors;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reading all events, parsing their JSON and adding up one table by hand, against rebuilding the reel balances, which
 * adds up three tables from typed events. The raw way does less; it is the floor.
 */
final class ProjectorSpeed {
    private static final int PAGE = 2_000;
    private final Projectors projectors;
    private final DataSource dataSource;
    private final long events;
    private final JsonMapper json = JsonMapper.builder().build();

    ProjectorSpeed(ApplicationContext supplyStock) {
        this.projectors = supplyStock.getBean(Projectors.class);
        this.dataSource = supplyStock.getBean(DataSource.class);
        this.events = JdbcClient.create(dataSource)
                .sql("SELECT count(*) FROM domain_event_entry WHERE payload_type LIKE 'reel.%'")
                .query(Long.class)
                .single();
        JdbcClient.create(dataSource)
                .sql("CREATE TABLE IF NOT EXISTS raw_sum (id varchar(64) PRIMARY KEY, quantity bigint NOT NULL)")
                .update();
        supplyStock.getBean(EventLog.class).head();
    }

    Interleaved.Result measure(int turns) throws Exception {
        return new Interleaved(turns)
                .compare("read model of %,d events (events per s)".formatted(events), this::raw, this::ours);
    }

    private long ours() {
        projectors.rebuild("reel-balance");
        return events;
    }

    private long raw() throws Exception {
        long position = 0;
        long read = 0;
        try (Connection connection = dataSource.getConnection()) {
            connection.setAutoCommit(false);
            while (true) {
                Map<String, Long> sums = new LinkedHashMap<>();
                long last = position;
                try (PreparedStatement select = connection.prepareStatement("""
                        SELECT global_index, aggregate_identifier, payload FROM domain_event_entry
                        WHERE global_index > ? AND payload_type LIKE 'reel.%' ORDER BY global_index LIMIT ?""")) {
                    select.setLong(1, position);
                    select.setInt(2, PAGE);
                    try (ResultSet rows = select.executeQuery()) {
                        while (rows.next()) {
                            last = rows.getLong(1);
                            read++;
                            for (JsonNode move : json.readTree(rows.getBytes(3))
                                    .path("entry")
                                    .path("moves")) {
                                sums.merge(
                                        rows.getString(2), move.path("quantity").asLong(), Long::sum);
                            }
                        }
                    }
                }
                if (last == position) {
                    return read;
                }
                upsert(connection, sums);
                connection.commit();
                position = last;
            }
        }
    }

    private static void upsert(Connection connection, Map<String, Long> sums) throws Exception {
        try (PreparedStatement upsert = connection.prepareStatement("""
                INSERT INTO raw_sum AS r SELECT * FROM unnest(?::varchar[], ?::bigint[])
                ON CONFLICT (id) DO UPDATE SET quantity = r.quantity + EXCLUDED.quantity""")) {
            Array ids = connection.createArrayOf("varchar", sums.keySet().toArray());
            Array quantities = connection.createArrayOf("bigint", sums.values().toArray());
            upsert.setArray(1, ids);
            upsert.setArray(2, quantities);
            upsert.executeUpdate();
        }
    }
}
