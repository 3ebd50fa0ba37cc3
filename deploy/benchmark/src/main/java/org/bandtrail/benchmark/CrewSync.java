package org.bandtrail.benchmark;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * 500 rows inserted as one raw batch, against a crew's sync of 500 fitted bands through the front door of
 * site-installs.
 */
final class CrewSync {
    private static final int RECORDS = 500;
    private final HttpClient http = HttpClient.newHttpClient();
    private final URI siteInstalls;
    private final String key;
    private final DataSource dataSource;
    private final AtomicLong next = new AtomicLong();

    CrewSync(URI siteInstalls, String key, DataSource dataSource) {
        this.siteInstalls = siteInstalls;
        this.key = key;
        this.dataSource = dataSource;
        JdbcClient.create(dataSource).sql("""
                CREATE TABLE IF NOT EXISTS raw_record (id bigint PRIMARY KEY, command_id uuid NOT NULL UNIQUE,
                    body bytea NOT NULL)""").update();
    }

    Interleaved.Result measure(int turns) throws Exception {
        return new Interleaved(turns).compare("crew's sync of 500 bands (records per s)", this::raw, this::ours);
    }

    private long raw() throws Exception {
        try (Connection connection = dataSource.getConnection()) {
            connection.setAutoCommit(false);
            try (PreparedStatement insert =
                    connection.prepareStatement("INSERT INTO raw_record (id, command_id, body) VALUES (?, ?, ?)")) {
                for (int i = 0; i < RECORDS; i++) {
                    insert.setLong(1, next.incrementAndGet());
                    insert.setObject(2, UUID.randomUUID());
                    insert.setBytes(3, new byte[400]);
                    insert.addBatch();
                }
                insert.executeBatch();
            }
            connection.commit();
        }
        return RECORDS;
    }

    private long ours() throws Exception {
        String records = LongStream.range(0, RECORDS)
                .mapToObj(i -> record(next.incrementAndGet()))
                .collect(Collectors.joining(",", "{\"records\":[", "]}"));
        HttpResponse<String> answer = http.send(
                HttpRequest.newBuilder(siteInstalls.resolve("/bands/sync"))
                        .header("Authorization", "Bearer " + key)
                        .header("Bandtrail-Person", "P-BENCH")
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(records))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("The sync was answered with " + answer.statusCode() + ": " + answer.body());
        }
        return RECORDS;
    }

    private static String record(long number) {
        return """
                {"commandId":"%s","bandId":"BB-%d","treeId":"TB-%d","siteId":"S-B","crewId":"C-B","personId":"P-BENCH",
                 "girth":"942 mm","height":"1200 mm","tape":{"reelId":"R-B1","length":"1030 mm"},
                 "mesh":{"reelId":"R-B2","length":"1175 mm"},"fasteners":{"batchId":"B-B1","pieces":8},
                 "happenedAt":"2026-05-04T08:00:00Z"}""".formatted(UUID.randomUUID(), number, number);
    }
}
