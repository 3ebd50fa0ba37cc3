package org.bandtrail.supplystock.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.StreamSupport;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.crews.CrewCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.client.HttpClientErrorException;
import org.springframework.web.client.RestClient;
import tools.jackson.databind.JsonNode;

/** The whole way: commands, stored events, projection, HTTP. Other tests share the database, so own names are used. */
@OnPostgres
class SpendOverHttpTest {
    private static final PersonId WHO = new PersonId("P-1");
    private static final Place DEPOT = Place.depot(new DepotId("D-1"));
    private static final Occurred NOON = Occurred.at(Instant.parse("2026-05-04T12:00:00Z"));

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Value("${bandtrail.service-key}")
    String key = "";

    @LocalServerPort
    int port;

    @Test
    void a_fitted_piece_is_spend_of_its_site_and_the_identity_holds() {
        fitAThirdOfAReel("R-SPEND-1", "SPEND-A");

        JsonNode spend = get("/spend?by=site&limit=1000");
        JsonNode row = only(spend, "siteId", "SPEND-A");
        assertThat(row.get("tapeMinor").asLong()).isEqualTo(3_33);
        assertThat(row.get("totalMinor").asLong()).isEqualTo(3_33);
        assertThat(row.get("tapeMm").asLong()).isEqualTo(1_000);
        assertThat(row.get("currency").asString()).isEqualTo("USD");
        assertThat(row.has("key")).isFalse();
        JsonNode identity = spend.get("identity");
        assertThat(identity.get("differenceMinor").asLong()).isZero();
        assertThat(identity.get("received").get("minor").asLong())
                .isEqualTo(identity.get("inStock").get("minor").asLong()
                        + identity.get("charged").get("minor").asLong()
                        + identity.get("writtenOff").get("minor").asLong());
        assertThat(spend.get("total").get("totalMinor").asLong())
                .isEqualTo(identity.get("charged").get("minor").asLong());
    }

    @Test
    void by_tree_and_by_item_name_the_tree_and_the_item() {
        fitAThirdOfAReel("R-SPEND-2", "SPEND-B");

        JsonNode tree = only(get("/spend?by=tree&limit=1000"), "siteId", "SPEND-B");
        assertThat(tree.get("treeId").asString()).isEqualTo("SPEND-B-T1");
        assertThat(get("/spend?by=item&limit=1000").get("rows"))
                .anyMatch(row -> row.get("materialCode").asString().equals("SPEND-TAPE"));
    }

    @Test
    void pages_follow_each_other_by_their_cursor() {
        fitAThirdOfAReel("R-SPEND-3", "SPEND-C");
        fitAThirdOfAReel("R-SPEND-4", "SPEND-D");

        JsonNode first = get("/spend?by=site&limit=1&after=SPEND-B ZZZ");
        assertThat(first.get("rows").get(0).get("siteId").asString()).isEqualTo("SPEND-C");
        JsonNode second =
                get("/spend?by=site&limit=1&after=" + first.get("next").asString());
        assertThat(second.get("rows").get(0).get("siteId").asString()).isEqualTo("SPEND-D");
    }

    @Test
    void another_way_of_adding_up_is_refused_by_name() {
        assertThatThrownBy(() -> get("/spend?by=moon"))
                .isInstanceOf(HttpClientErrorException.BadRequest.class)
                .hasMessageContaining(
                        "Spend by [moon] is not known. Use one of site, tree, item, crew, person, month, grant.");
    }

    @Test
    void a_rebuilt_spend_is_the_same_as_the_old_one() {
        fitAThirdOfAReel("R-SPEND-5", "SPEND-E");
        JsonNode before = get("/spend?by=tree&limit=1000").get("rows");
        projectors.rebuild("ledger");
        assertThat(get("/spend?by=tree&limit=1000").get("rows")).isEqualTo(before);
    }

    @Test
    void who_changes_crews_leaves_the_old_spend_with_the_old_crew() {
        crew("SPEND-C1", "2026-05-01T06:00:00Z", "P-1");
        fitAThirdOfAReel("R-SPEND-7", "SPEND-G");
        long before = ofCrew("SPEND-C1");
        crew("SPEND-C2", "2026-06-01T06:00:00Z", "P-1");
        work.inOneTransaction(() -> {
            commands.send(new CrewCommand.ChangePeople(
                    new CrewId("SPEND-C1"),
                    List.of(new PersonId("P-OTHER")),
                    WHO,
                    Occurred.at(Instant.parse("2026-06-01T06:00:00Z"))));
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();

        assertThat(ofCrew("SPEND-C1")).isEqualTo(before).isGreaterThanOrEqualTo(3_33);
        assertThat(ofCrew("SPEND-C2")).isZero();
    }

    private void crew(String crew, String at, String person) {
        work.inOneTransaction(() -> {
            commands.send(new CrewCommand.Form(
                    new CrewId(crew),
                    crew,
                    new DepotId("D-1"),
                    List.of(new PersonId(person)),
                    WHO,
                    Occurred.at(Instant.parse(at))));
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    private long ofCrew(String crew) {
        return StreamSupport.stream(get("/spend?by=crew&limit=1000").get("rows").spliterator(), false)
                .filter(row -> row.path("crewId").asString("").equals(crew))
                .mapToLong(row -> row.get("totalMinor").asLong())
                .sum();
    }

    private void fitAThirdOfAReel(String reel, String site) {
        ReelId id = new ReelId(reel);
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.Receive(
                    id,
                    new MaterialCode("SPEND-TAPE"),
                    MaterialKind.TAPE,
                    Length.ofMm(3_000),
                    Money.of(10_00, "USD"),
                    DEPOT,
                    WHO,
                    NOON));
            commands.send(new ReelCommand.RecordFact(
                    id,
                    "fact of " + reel,
                    Place.crew(WHO),
                    Place.tree(new TreeId(site + "-T1")),
                    Length.ofMm(1_000),
                    new SiteId(site),
                    WHO,
                    NOON));
            return reel;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    private static JsonNode only(JsonNode spend, String field, String value) {
        List<JsonNode> rows = StreamSupport.stream(spend.get("rows").spliterator(), false)
                .filter(row -> row.get(field).asString().equals(value))
                .toList();
        assertThat(rows).hasSize(1);
        return rows.getFirst();
    }

    private JsonNode get(String path) {
        return Objects.requireNonNull(RestClient.create("http://127.0.0.1:" + port)
                .get()
                .uri(path.replace(" ", "%20"))
                .header("Authorization", "Bearer " + key)
                .retrieve()
                .body(JsonNode.class));
    }
}
