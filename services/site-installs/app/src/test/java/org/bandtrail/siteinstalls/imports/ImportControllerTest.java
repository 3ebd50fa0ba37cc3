package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.LinkedMultiValueMap;
import tools.jackson.databind.JsonNode;

@OnPostgres
class ImportControllerTest {
    private static final String LIVING_2026 = """
            {"siteColumn":"Plot","tagColumn":"Tree_ID","speciesColumn":"Species_code","dbhColumn":"DBH_2026",
             "unit":"cm","dateColumn":"Date_2026","where":"Status_2026=LI"}""";
    private final Http http;
    private final Projectors projectors;
    private final JdbcClient jdbc;

    @Autowired
    ImportControllerTest(@LocalServerPort int port, Projectors projectors, JdbcClient jdbc) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.jdbc = jdbc;
    }

    private Http.Answer preview(byte[] file, String mapping) {
        LinkedMultiValueMap<String, Object> form = new LinkedMultiValueMap<>();
        form.add("file", new ByteArrayResource(file) {
            @Override
            public String getFilename() {
                return "inventory.csv";
            }
        });
        form.add("mapping", mapping);
        return http.upload("/tree-imports/preview", form);
    }

    private Http.Answer store(JsonNode preview, boolean onlyReady) {
        return http.post(
                "/tree-imports/%s/store".formatted(preview.path("importId").asString()),
                "{\"commandId\":\"%s\",\"onlyReady\":%s}".formatted(Http.commandId(), onlyReady));
    }

    private void site(String siteId) {
        http.post(
                "/sites",
                "{\"commandId\":\"%s\",\"siteId\":\"%s\",\"name\":\"%s\"}".formatted(Http.commandId(), siteId, siteId));
    }

    private long trees(String site) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(30))).isTrue();
        return jdbc.sql("SELECT count(*) FROM tree WHERE site_id LIKE ?")
                .param(site)
                .query(Long.class)
                .single();
    }

    /** Figures counted with Python, see {@link ForestInventoryTest}. */
    @Test
    void the_living_trees_of_a_real_inventory_go_in_as_shown_and_only_once() throws IOException {
        byte[] file;
        try (@Nullable InputStream inventory = getClass().getResourceAsStream("/trees/forest-plot-inventory.csv")) {
            assertThat(inventory).isNotNull();
            file = inventory.readAllBytes();
        }
        Http.Answer unknownSites = preview(file, LIVING_2026);
        assertThat(unknownSites.body().path("ready").asInt()).isZero();
        assertThat(unknownSites.body().path("problems")).hasSize(410);

        site("CONTROL");
        site("SALTWATER");
        site("FRESHWATER");
        JsonNode shown = preview(file, LIVING_2026).body();
        assertThat(shown.path("rowCount").asInt()).isEqualTo(533);
        assertThat(shown.path("ready").asInt()).isEqualTo(404);
        assertThat(shown.path("problems")).hasSize(6);
        assertThat(shown.path("questions")).hasSize(198);

        Http.Answer notAll = store(shown, false);
        assertThat(notAll.status()).isEqualTo(409);
        assertThat(notAll.body().path("type").asString()).isEqualTo("/problems/import-not-all-ready");
        assertThat(store(shown, true).body().path("stored").asInt()).isEqualTo(404);
        assertThat(trees("CONTROL") + trees("SALTWATER") + trees("FRESHWATER")).isEqualTo(404);
        assertThat(jdbc.sql("SELECT sum(girth_mm) FROM tree WHERE site_id IN ('CONTROL', 'SALTWATER', 'FRESHWATER')")
                        .query(Long.class)
                        .single())
                .isEqualTo(272_818);
        JsonNode tree = http.get("/trees/CONTROL-1304").body();
        assertThat(tree.path("girthMm").asLong()).isEqualTo(1674);
        assertThat(tree.path("history")).hasSize(2);

        assertThat(store(shown, true).status()).isEqualTo(409);
        assertThat(preview(file, LIVING_2026).body().path("ready").asInt()).isZero();
    }

    @Test
    void if_one_tree_was_registered_since_the_preview_none_is_stored() {
        site("HAZEL-WOOD");
        String file = "Tag,Girth\n1,1200\n2,1300\n3,1400\n";
        String mapping = """
                {"siteId":"HAZEL-WOOD","tagColumn":"Tag","girthColumn":"Girth","unit":"mm"}""";
        JsonNode shown = preview(file.getBytes(StandardCharsets.UTF_8), mapping).body();
        assertThat(shown.path("ready").asInt()).isEqualTo(3);
        http.post(
                "/trees", "{\"commandId\":\"%s\",\"siteId\":\"HAZEL-WOOD\",\"tag\":\"2\"}".formatted(Http.commandId()));

        Http.Answer refused = store(shown, false);

        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("detail").asString()).contains("HAZEL-WOOD-2");
        assertThat(trees("HAZEL-WOOD")).isOne();
    }

    @Test
    void values_that_carry_their_units_need_no_unit_of_the_column() {
        site("MAPLE");
        String file = "Tag,Round\n1,3 ft 0 3/4 in\n2,40\n";
        String mapping = """
                {"siteId":"MAPLE","tagColumn":"Tag","girthColumn":"Round","unit":"ft-in"}""";
        JsonNode shown = preview(file.getBytes(StandardCharsets.UTF_8), mapping).body();
        // 36.75 in x 25.4 = 933.45 mm
        assertThat(shown.path("sample").path(0).path("girthMm").asLong())
                .as("%s", shown)
                .isEqualTo(933);
        assertThat(shown.path("problems").path(0).path("row").asInt()).isEqualTo(3);
    }

    @Test
    void a_mapping_that_cannot_be_is_refused_by_name() {
        Http.Answer answer = preview("Tag,Girth\n".getBytes(StandardCharsets.UTF_8), """
                {"siteId":"MAPLE","tagColumn":"Tag","girthColumn":"Girth","unit":"cubits"}""");
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("[cubits]");
        assertThat(http.get("/tree-imports/IMP-NONE").status()).isEqualTo(404);
    }
}
