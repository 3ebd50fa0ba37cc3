package org.bandtrail.siteinstalls.planmaking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.depotstock.DepotChanges;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

/** Plans as the front desk makes them: each test has a site, trees and a depot of its own. */
@OnPostgres
class WorkPlansOverHttpTest {
    private final Http http;
    private final Projectors projectors;
    private final DepotChanges depots;
    private final JdbcClient jdbc;

    @Autowired
    WorkPlansOverHttpTest(@LocalServerPort int port, Projectors projectors, DepotChanges depots, JdbcClient jdbc) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.depots = depots;
        this.jdbc = jdbc;
    }

    @Test
    void a_plan_says_at_once_what_it_needs_and_whether_the_stock_suffices() {
        world("WA", true);
        reel("WA", 3_000);

        JsonNode checked = ok("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WA", "\"WA-1\"", "\"WA-2\"")));

        assertThat(checked.path("needs").get(0).path("quantity").asLong())
                .as("1090 and 1590 mm")
                .isEqualTo(2_680);
        JsonNode tape = checked.path("review").path("stock").get(0);
        assertThat(tape.path("free").asLong()).isEqualTo(3_000);
        assertThat(tape.path("missing").asLong()).isZero();
        assertThat(tape.path("sentence").asString()).endsWith("That suffices.");
        assertThat(checked.path("review").path("suffices").asBoolean()).isTrue();
        assertThat(words(checked.path("review").path("warnings")))
                .anyMatch(warning -> warning.contains("No guard is planned"))
                .anyMatch(warning -> warning.contains("Trees WA-1, WA-2 are not checked as a host"));
    }

    @Test
    void what_another_agreed_plan_needs_is_not_free_and_a_reel_must_reach_round_the_thickest_tree() {
        world("WB", true);
        reel("WB", 1_500);
        reel("WB", 1_500);
        JsonNode short1 = stock("WB", plan("WB", "\"WB-2\""));
        assertThat(short1.path("missing").asLong()).isZero();
        assertThat(short1.path("enough").asBoolean()).isFalse();
        assertThat(short1.path("sentence").asString()).contains("No reel is long enough", "1.590 m", "1.500 m");

        draft("WB", true, plan("WB", "\"WB-1\""));
        JsonNode short2 = stock("WB", plan("WB", "\"WB-2\", \"WB-4\""));
        assertThat(short2.path("plannedBefore").asLong()).isEqualTo(1_090);
        assertThat(short2.path("missing").asLong()).isEqualTo(1_590 + 990 - (3_000 - 1_090));
        assertThat(short2.path("sentence").asString()).contains("are missing. Order it");
    }

    @Test
    void without_consent_without_girth_or_without_the_tree_nothing_is_planned() {
        world("WC", false);
        Http.Answer noConsent = http.post("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WC", "\"WC-1\"")));
        assertThat(noConsent.status()).isEqualTo(409);
        assertThat(noConsent.body().path("detail").asString()).contains("WC", "2026-05-11", "Ask the owner");

        Http.Answer notReady = http.post("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WC", "\"WC-3\", \"WC-9\"")));
        assertThat(notReady.status()).isEqualTo(409);
        assertThat(notReady.body().path("detail").asString())
                .contains("Tree [WC-3] has no girth", "Measure it first", "Tree [WC-9] is not registered");
    }

    @Test
    void a_closed_site_is_not_planned() {
        world("WG", true);
        ok("/sites/WG/close", """
                {"commandId":"%s","on":"2026-05-11","reason":"storm"}""".formatted(Http.commandId()));
        settle();
        Http.Answer closed = http.post("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WG", "\"WG-1\"")));
        assertThat(closed.status()).isEqualTo(409);
        assertThat(closed.body().path("detail").asString()).contains("Site [WG] is closed from 2026-05-11");
    }

    @Test
    void what_is_agreed_is_told_and_told_anew_with_each_change_and_nothing_is_needed_once_it_is_called_off() {
        world("WD", true);
        String plan = draft("WD", false, plan("WD", "\"WD-1\""));
        assertThat(told(plan)).as("a draft is nobody's demand").isEmpty();

        act(plan, "agree", "");
        act(plan, "agree", "");
        settle();
        assertThat(http.post(
                                "/work-plans/" + plan + "/change",
                                "{\"commandId\":\"%s\",\"plan\":%s}"
                                        .formatted(Http.commandId(), plan("WD", "\"WD-1\", \"WD-2\"")))
                        .status())
                .as("an agreed plan changes with a reason only")
                .isEqualTo(422);
        http.post(
                "/work-plans/" + plan + "/change",
                "{\"commandId\":\"%s\",\"reason\":\"one more\",\"plan\":%s}"
                        .formatted(Http.commandId(), plan("WD", "\"WD-1\", \"WD-2\"")));
        act(plan, "call-off", ",\"why\":\"rain\"");
        settle();

        assertThat(told(plan)).containsExactly("1: 1090", "2: 2680", "3: ");
        JsonNode one = http.get("/work-plans/" + plan).body();
        assertThat(one.path("state").asString()).isEqualTo("called off");
        assertThat(one.path("history"))
                .extracting(step -> step.path("what").asString())
                .containsExactly("called off", "changed", "agreed", "drafted");
        projectors.rebuild("work-plan");
        assertThat(http.get("/work-plans/" + plan).body().path("history")).isEqualTo(one.path("history"));
        assertThat(http.get("/work-plans/" + plan).body().path("walk")).isEqualTo(one.path("walk"));
    }

    @Test
    void two_plans_of_a_day_are_listed_under_names_of_their_own_and_a_crew_can_have_too_much() {
        world("WE", true);
        String first = draft("WE", true, plan("WE", "\"WE-1\", \"WE-2\", \"WE-4\""));
        settle();
        JsonNode found = ok("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WE", nineBandsOn("WE-1"), nineBandsOn("WE-2"))));
        assertThat(words(found.path("review").path("warnings")))
                .anyMatch(warning -> warning.contains("Crew WE-C would work about 8 h") && warning.contains(first))
                .anyMatch(warning -> warning.equals("Tree WE-1 stands in plan %s too.".formatted(first)));

        String second = draft("WE", false, plan("WE", "\"WE-4\""));
        settle();
        assertThat(List.of(first, second)).containsExactly("2026-05-11-WE-C", "2026-05-11-WE-C-2");
        assertThat(http.get("/work-plans?from=2026-05-11&until=2026-05-11&open=true&limit=500")
                        .body()
                        .path("rows"))
                .extracting(row -> row.path("planId").asString())
                .contains(first, second);
    }

    @Test
    void a_short_walk_begins_at_the_first_tree_and_trees_without_a_position_come_last() {
        world("WF", true);
        JsonNode walk = ok("/work-plans/check", """
                {"plan":%s}""".formatted(plan("WF", "\"WF-4\", \"WF-1\", \"WF-5\", \"WF-2\"")
                .replace("\"trees\"", "\"order\":\"shortest\",\"trees\"")));
        assertThat(walk.path("trees"))
                .extracting(tree -> tree.path("treeId").asString())
                .containsExactly("WF-1", "WF-2", "WF-5", "WF-4");
    }

    // Funnel trap: skirt = girth + 230 as a guard, up to 5 mm: 1230 and 1730 mm; one funnel to a trunk.
    @Test
    void a_plan_for_funnel_traps_needs_skirts_and_funnels_and_no_tape() {
        world("WK", true);
        String traps = plan("WK", "\"WK-1\"", "\"WK-2\"")
                .replace("\"tape\":\"WK-T\"", "\"device\":\"funnel-trap\",\"mesh\":\"WK-M\",\"other\":\"WK-F\"");

        String plan = draft("WK", true, traps);

        JsonNode one = http.get("/work-plans/" + plan).body();
        assertThat(one.path("device").asString()).isEqualTo("funnel-trap");
        assertThat(one.path("tapeCode").isNull()).isTrue();
        assertThat(one.path("needs"))
                .extracting(need -> need.path("material").asString() + " "
                        + need.path("quantity").asLong())
                .containsExactly("WK-M 2960", "WK-F 2");
        assertThat(one.path("walk"))
                .extracting(line -> line.path("others").asLong())
                .containsExactly(1L, 1L);
        JsonNode checked = ok("/work-plans/check", "{\"plan\":%s}".formatted(traps));
        assertThat(words(checked.path("review").path("warnings")))
                .as("nothing sticky is open, so no guard is asked for")
                .noneMatch(warning -> warning.contains("guard"));
        assertThat(http.post("/work-plans/check", "{\"plan\":%s}".formatted(traps.replace("funnel-trap", "kite")))
                        .body()
                        .path("detail")
                        .asString())
                .contains("Device [kite] is not described", "funnel-trap");
    }

    private static String nineBandsOn(String tree) {
        return "\"%s\",\"bands\":9".formatted(tree);
    }

    private static String plan(String mark, String... trees) {
        StringBuilder lines = new StringBuilder();
        for (String each : trees) {
            for (String tree : each.contains("bands") ? new String[] {each} : each.split(", ")) {
                lines.append(lines.isEmpty() ? "" : ",")
                        .append("{\"treeId\":")
                        .append(tree)
                        .append('}');
            }
        }
        return """
                {"day":"2026-05-11","crewId":"%1$s-C","depotId":"%1$s-D","tape":"%1$s-T","pest":"LYCMDE","trees":[%2$s]}""".formatted(mark, lines);
    }

    /** Four trees 50 m apart along a hedge: 1000, 1500, no girth, 900 mm; and a fifth between, of 900 mm. */
    private void world(String mark, boolean consent) {
        ok("/sites", """
                {"commandId":"%s","siteId":"%s","name":"A hedge"}""".formatted(Http.commandId(), mark));
        tree(mark, 1, "1000 mm", "40.0010");
        tree(mark, 2, "1500 mm", "40.0020");
        tree(mark, 3, null, "40.0030");
        tree(mark, 4, "900 mm", null);
        tree(mark, 5, "900 mm", "40.0040");
        if (consent) {
            ok("/consents/give", """
                    {"commandId":"%s","siteId":"%s","activities":["BANDS"],"from":"2026-04-01","how":"letter",
                     "contact":{"name":"Imke Vossbarg"}}""".formatted(Http.commandId(), mark));
        }
        settle();
    }

    private void tree(String mark, int number, @Nullable String girth, @Nullable String lat) {
        ok("/trees", """
                {"commandId":"%s","treeId":"%s-%d","siteId":"%s","tag":"%d"%s%s}""".formatted(
                        Http.commandId(),
                        mark,
                        number,
                        mark,
                        number,
                        girth == null ? "" : ",\"girth\":\"%s\"".formatted(girth),
                        lat == null ? "" : ",\"lat\":%s,\"lon\":-75.5".formatted(lat)));
    }

    private void reel(String mark, long length) {
        long number =
                jdbc.sql("SELECT count(*) FROM depot_holding").query(Long.class).single();
        var reel = new DepotChanges.Holding("reel", mark + "-R" + number);
        depots.received(
                reel,
                new DepotChanges.Receipt(
                        mark + "-T", MaterialKind.TAPE, length, Instant.parse("2026-04-01T08:00:00Z"), 1800, "USD"));
        depots.changed(reel, new DepotId(mark + "-D"), null, false, length);
    }

    private JsonNode stock(String mark, String plan) {
        settle();
        return ok("/work-plans/check", "{\"planId\":\"%s-OTHER\",\"plan\":%s}".formatted(mark, plan))
                .path("review")
                .path("stock")
                .get(0);
    }

    private String draft(String mark, boolean agree, String plan) {
        String name = ok("/work-plans", """
                {"commandId":"%s","agree":%s,"plan":%s}""".formatted(Http.commandId(), agree, plan))
                .path("planId")
                .asString();
        settle();
        assertThat(name).contains(mark);
        return name;
    }

    private void act(String plan, String what, String more) {
        ok("/work-plans/%s/%s".formatted(plan, what), "{\"commandId\":\"%s\"%s}".formatted(Http.commandId(), more));
    }

    private List<String> told(String plan) {
        return jdbc.sql("""
                        SELECT (data->>'sequence') || ': ' || coalesce(data->'lines'->0->>'quantity', '')
                        FROM outbox WHERE subject = ? ORDER BY position""").param("plan/" + plan).query(String.class).list();
    }

    private JsonNode ok(String path, String json) {
        Http.Answer answer = http.post(path, json);
        assertThat(answer.status()).as(path + ": " + answer.body()).isEqualTo(200);
        return answer.body();
    }

    private static List<String> words(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    private void settle() {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }
}
