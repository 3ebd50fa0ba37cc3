package org.bandtrail.siteinstalls.maps;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class MapControllerTest {
    private static final String BOX = "?south=%s&west=10&north=%s&east=11&on=2026-06-30";
    private final Http http;
    private final Projectors projectors;
    private final JdbcClient jdbc;

    @Autowired
    MapControllerTest(@LocalServerPort int port, Projectors projectors, JdbcClient jdbc) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.jdbc = jdbc;
    }

    private void trees(int latitude, int count) {
        jdbc.sql("""
                        INSERT INTO tree (tree_id, site_id, tag, species, registered_at, latitude_e7, longitude_e7)
                        SELECT 'MAP-' || :lat || '-' || n, 'MAP', n::text, '', now(),
                               :lat * 10000000 + (n % 100) * 90000, 100000000 + n / 100 * 90000
                        FROM generate_series(0, :count - 1) AS n""").param("lat", latitude).param("count", count).update();
    }

    private void band(String treeId, String last) {
        jdbc.sql("INSERT INTO band (band_id, tree_id, state, must_remove_by) VALUES (?, ?, 'up', CAST(? AS date))")
                .params("B-" + treeId, treeId, last)
                .update();
    }

    private JsonNode map(int south, int north) {
        return http.get("/map" + BOX.formatted(south, north)).body();
    }

    @Test
    void a_few_trees_come_one_by_one_with_what_hangs_on_them() {
        trees(50, 3);
        band("MAP-50-0", "2026-07-01");
        band("MAP-50-1", "2026-06-30");
        JsonNode map = map(50, 51);
        assertThat(map.path("clusters")).isEmpty();
        assertThat(map.path("trees")
                        .valueStream()
                        .map(tree -> tree.path("state").asString()))
                .containsExactly("BAND_UP", "DUE", "NO_BAND");
        assertThat(map.path("treesInBox").asInt()).isEqualTo(3);
    }

    @Test
    void many_trees_are_gathered_and_none_is_lost() {
        trees(52, 2_000);
        band("MAP-52-7", "2026-06-01");
        JsonNode map = map(52, 53);
        assertThat(map.path("trees")).isEmpty();
        assertThat(map.path("clusters").size()).isBetween(10, 17 * 17);
        long counted = map.path("clusters")
                .valueStream()
                .mapToLong(cell -> cell.path("noBand").asLong()
                        + cell.path("bandUp").asLong()
                        + cell.path("due").asLong())
                .sum();
        assertThat(counted).isEqualTo(2_000);
        assertThat(map.path("clusters")
                        .valueStream()
                        .mapToLong(cell -> cell.path("due").asLong())
                        .sum())
                .isOne();
    }

    @Test
    void a_site_is_there_when_its_boundary_or_point_touches_the_box() {
        http.post(
                "/sites",
                "{\"commandId\":\"%s\",\"siteId\":\"MAP-S\",\"name\":\"Weir\",\"lat\":54.5,\"lon\":10.5}"
                        .formatted(Http.commandId()));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(map(54, 55).path("sites").path(0).path("name").asString()).isEqualTo("Weir");
        assertThat(map(55, 56).path("sites")).isEmpty();
        assertThat(http.get("/map?on=2026-06-30")
                        .body()
                        .path("box")
                        .path("north")
                        .asDouble())
                .isGreaterThanOrEqualTo(54.5);
        assertThat(http.get("/map?south=1").status()).isEqualTo(400);
        assertThat(http.get("/map?south=2&west=1&north=1&east=2").status()).isEqualTo(400);
    }
}
