package org.bandtrail.siteinstalls.policies;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class CutPolicyControllerTest {
    private final Http http;
    private final Projectors projectors;

    @Autowired
    CutPolicyControllerTest(@LocalServerPort int port, Projectors projectors) {
        this.http = new Http(port);
        this.projectors = projectors;
    }

    private Http.Answer publish(String source, String overlap) {
        return http.post("/policies/cut-lengths", """
                {"commandId":"%s","validFrom":"2031-03-01","source":"%s","reason":"tape came loose in the wind",
                 "values":{"tapeOverlap":"%s","tapeTab":"3/4 in","tapeWidest":"5 in","meshExtra":"12 in",
                  "meshLeastStandOff":"1 in","meshWidestOpening":"1/2 in","fastenerSpacing":"6 in",
                  "fastenerMinimum":6,"heightUsual":"4 ft","heightLowest":"3 ft","heightHighest":"5 ft",
                  "girthMinimum":"479 mm","girthQuestionAbove":"6 m","girthChangePermille":250,
                  "removeAfterDays":120,"lateAfterDays":3}}""".formatted(Http.commandId(), source, overlap));
    }

    @Test
    void a_version_holds_from_its_day_and_not_a_day_earlier() {
        assertThat(publish("field trial of two crews", "4 in").status()).isEqualTo(200);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();

        JsonNode before = http.get("/proposals?girth=1234 mm&on=2031-02-28").body();
        JsonNode after = http.get("/proposals?girth=1234 mm&on=2031-03-01").body();

        assertThat(before.path("tapeMm").asInt()).isEqualTo(1325);
        // By hand: 1234 + 102 + 2 x 19 = 1374, up to 1375; 1234 + 305 = 1539, up to 1540; 306 / (2 pi) = 48.7.
        assertThat(after.path("tapeMm").asInt()).isEqualTo(1375);
        assertThat(after.path("meshMm").asInt()).isEqualTo(1540);
        assertThat(after.path("standOffMm").asInt()).isEqualTo(49);
        assertThat(after.path("policyVersion").asInt())
                .isGreaterThan(before.path("policyVersion").asInt());
    }

    @Test
    void a_version_without_source_is_refused_and_values_out_of_range_are_named() {
        assertThat(publish(" ", "2 in").body().path("type").asString()).isEqualTo("/problems/policy-source-missing");
        Http.Answer far = publish("typo", "2 yd");
        assertThat(far.status()).isEqualTo(400);
        assertThat(far.body().path("detail").asString()).contains("overlap of the tape in mm [1829]");
    }

    @Test
    void a_proposal_for_a_tree_needs_its_girth_and_may_be_in_inches() {
        assertThat(http.get("/proposals").status()).isEqualTo(400);
        assertThat(http.get("/proposals?tree=NO-SUCH").status()).isEqualTo(404);
        JsonNode imperial = http.get("/proposals?girth=1234 mm&measure=imperial&on=2026-05-01")
                .body();
        assertThat(imperial.path("tapeMm").asInt()).isEqualTo(1324);
        assertThat(http.get("/proposals?girth=1 m&measure=cubits").status()).isEqualTo(400);
    }

    @Test
    void a_version_shows_where_each_value_comes_from_and_what_it_changed() {
        assertThat(publish("field trial of three crews", "3 in").status()).isEqualTo(200);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        int newest = http.get("/policies/cut-lengths")
                .body()
                .path("rows")
                .path(0)
                .path("version")
                .asInt();

        JsonNode page =
                http.get("/policies/cut-lengths/" + newest + "?against=1").body();

        assertThat(page.path("against").asInt()).isOne();
        JsonNode overlap = page.path("values").path(0);
        assertThat(overlap.path("guide").path("name").asString()).isEqualTo("tapeOverlapMm");
        assertThat(overlap.path("source").asString()).isEqualTo("field trial of three crews");
        assertThat(page.path("differences").path(0).path("was").asInt()).isEqualTo(50);
        assertThat(page.path("differences").path(0).path("now").asInt()).isEqualTo(76);
        JsonNode widest = page.path("values").path(2);
        assertThat(widest.path("guide").path("name").asString()).isEqualTo("tapeWidestMm");
        assertThat(widest.path("since").asInt()).isOne();
        assertThat(http.get("/policies/cut-lengths/9999").status()).isEqualTo(404);
    }

    @Test
    void a_check_asks_and_stores_nothing() {
        int before = http.get("/policies/cut-lengths").body().path("rows").size();
        Http.Answer answer = http.post("/policies/cut-lengths/check", """
                {"commandId":"%s","validFrom":"2031-03-01","pest":"cheibr","source":"s","reason":"r",
                 "values":{"tapeOverlap":"2 mm","tapeTab":"3/4 in","tapeWidest":"5 in","meshExtra":"12 in",
                  "meshLeastStandOff":"1 in","meshWidestOpening":"1 in","fastenerSpacing":"6 in",
                  "fastenerMinimum":6,"heightUsual":"4 ft","heightLowest":"3 ft","heightHighest":"5 ft",
                  "girthMinimum":"479 mm","girthQuestionAbove":"6 m","girthChangePermille":250,
                  "removeAfterDays":120,"lateAfterDays":3,"bandsPerTree":2}}""".formatted(Http.commandId()));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body()
                        .path("questions")
                        .valueStream()
                        .map(each -> each.path("field").asString()))
                .containsExactly("tapeOverlapMm", "meshWidestOpeningMm");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(http.get("/policies/cut-lengths").body().path("rows")).hasSize(before);
        assertThat(http.get("/policies/cut-lengths/in-force?pest=CHEIBR&on=2026-05-01")
                        .body()
                        .path("policy")
                        .path("version")
                        .asInt())
                .isOne();
    }
}
