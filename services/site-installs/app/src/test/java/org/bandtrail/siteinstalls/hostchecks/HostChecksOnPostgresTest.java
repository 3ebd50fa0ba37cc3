package org.bandtrail.siteinstalls.hostchecks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class HostChecksOnPostgresTest {
    private static final String SURE = """
            [{"question":"leaf","answer":"many"},{"question":"twig","answer":"alternate"},
             {"question":"edge","answer":"smooth"},{"question":"fruit","answer":"wings"},
             {"question":"smell","answer":"rank"}]""";
    private static final String SINGLE = "[{\"question\":\"leaf\",\"answer\":\"single\"}]";
    private final Http http;
    private final Projectors projectors;
    private final HostChecks checks;

    @Autowired
    HostChecksOnPostgresTest(@LocalServerPort int port, Projectors projectors, HostChecks checks) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.checks = checks;
    }

    private Http.Answer check(String tree, String answers, String moment) {
        return http.post(
                "/host-checks",
                "{\"commandId\":\"%s\",\"treeId\":\"%s\",\"pest\":\"LYCMDE\",\"answers\":%s,\"happenedAt\":\"%s\"}"
                        .formatted(Http.commandId(), tree, answers, moment));
    }

    private void fit(String band, String tree) {
        http.post("/bands", """
                {"commandId":"%s","bandId":"%s","treeId":"%s","siteId":"HAZEL","crewId":"C-1","personId":"P-07",
                 "tape":{"reelId":"HR-1","length":"1325 mm"},"happenedAt":"2026-04-05T08:00:00Z"}""".formatted(Http.commandId(), band, tree));
    }

    private List<String> findings(String tree) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return http.get("/host-checks/findings?tree=" + tree)
                .body()
                .path("rows")
                .valueStream()
                .map(row -> row.path("finding").asString())
                .toList();
    }

    @Test
    void the_key_is_asked_question_by_question() {
        JsonNode first = http.post("/host-checks/next", "{\"pest\":\"lycmde\",\"answers\":[]}")
                .body();
        assertThat(first.path("question").path("id").asString()).isEqualTo("leaf");
        assertThat(first.path("of").asInt()).isEqualTo(5);
        JsonNode ended = http.post("/host-checks/next", "{\"pest\":\"LYCMDE\",\"answers\":" + SINGLE + "}")
                .body();
        assertThat(ended.path("question").isNull()).isTrue();
        assertThat(ended.path("soFar").path("outcome").asString()).isEqualTo("NOT_HOST");
        assertThat(http.post("/host-checks/next", "{\"pest\":\"CHEIBR\",\"answers\":[]}")
                        .status())
                .isEqualTo(404);
    }

    @Test
    void the_check_that_was_made_last_counts_and_all_stay_with_their_answers() {
        assertThat(check("HAZEL-1", SURE, "2026-05-02T08:00:00Z")
                        .body()
                        .path("confidencePercent")
                        .asInt())
                .isEqualTo(95);
        check("HAZEL-1", SINGLE, "2026-05-01T08:00:00Z");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode rows = http.get("/host-checks?tree=HAZEL-1").body().path("rows");
        assertThat(rows).hasSize(2);
        assertThat(rows.path(0).path("outcome").asString()).isEqualTo("HOST");
        assertThat(rows.path(0).path("speciesCode").asString()).isEqualTo("AILAL");
        assertThat(rows.path(1).path("answers").path(0).path("answer").asString())
                .isEqualTo("single");
        assertThat(check("HAZEL-1", "[{\"question\":\"leaf\",\"answer\":\"blue\"}]", "2026-05-01T08:00:00Z")
                        .status())
                .isEqualTo(400);
    }

    @Test
    void a_band_on_a_tree_nobody_checked_or_that_is_no_host_is_a_finding_and_never_refused() {
        http.post("/trees", "{\"commandId\":\"%s\",\"siteId\":\"HAZEL\",\"tag\":\"2\"}".formatted(Http.commandId()));
        fit("HB-2", "HAZEL-2");
        assertThat(findings("HAZEL-2")).containsExactly("not-checked");
        check("HAZEL-2", SINGLE, "2026-05-01T08:00:00Z");
        assertThat(findings("HAZEL-2")).containsExactly("no-host");
        check("HAZEL-2", SURE, "2026-05-02T08:00:00Z");
        assertThat(findings("HAZEL-2")).isEmpty();
        http.post("/trees/HAZEL-2/gone", "{\"commandId\":\"%s\",\"how\":\"FELLED\"}".formatted(Http.commandId()));
        assertThat(findings("HAZEL-2")).containsExactly("gone");
    }

    @Test
    void rebuilt_rows_are_the_same() {
        check("HAZEL-3", SURE, "2026-05-02T08:00:00Z");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        List<HostCheckView> before = checks.of(new TreeId("HAZEL-3"));
        assertThat(before).hasSize(1);
        projectors.rebuild("host-check");
        assertThat(checks.of(new TreeId("HAZEL-3"))).isEqualTo(before);
        assertThat(checks.latest(List.of(new TreeId("HAZEL-3"))).values()).containsExactlyElementsOf(before);
    }
}
