package org.bandtrail.siteinstalls;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.eventsourcing.eventstore.EmbeddedEventStore;
import org.axonframework.eventsourcing.eventstore.EventStore;
import org.axonframework.spring.messaging.unitofwork.SpringTransactionManager;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.StoredNames;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class WiringTest {
    @Autowired
    private EventStore eventStore;

    @Autowired
    private TransactionManager transactions;

    @Autowired
    private StoredNames names;

    @Autowired
    private Projectors projectors;

    @Autowired
    private ObjectProvider<Projection> projections;

    @Autowired
    private ObjectProvider<ReceivedHandler> handlers;

    @Autowired
    private JdbcClient jdbc;

    @LocalServerPort
    private int port;

    @Test
    void events_and_rows_share_real_transactions() {
        assertThat(transactions).isInstanceOf(SpringTransactionManager.class);
        assertThat(eventStore).isInstanceOf(EmbeddedEventStore.class);
    }

    @Test
    void every_event_has_its_stored_name() {
        assertThat(names.all())
                .containsExactlyInAnyOrder(
                        "site.registered",
                        "site.corrected",
                        "site.outlined",
                        "site.hours-set",
                        "site.hazards-set",
                        "site.closed",
                        "site.reopened",
                        "consent.asked",
                        "consent.given",
                        "consent.declined",
                        "consent.renewed",
                        "consent.withdrawn",
                        "tree.registered",
                        "tree.girth-measured",
                        "tree.corrected",
                        "tree.gone",
                        "tree.found-again",
                        "tree.merged",
                        "tree.unmerged",
                        "host-check.made",
                        "cut-plan.drawn",
                        "cut-plan.agreed",
                        "cut-plan.handed-over",
                        "cut-plan.dropped",
                        "cut-policy.published",
                        "band.fitted",
                        "band.pieces-replaced",
                        "band.taken-down",
                        "mesh-piece.taken-back",
                        "mesh-piece.graded",
                        "mesh-piece.put",
                        "mesh-piece.fitted",
                        "plan.drafted",
                        "plan.redrafted",
                        "plan.agreed",
                        "plan.changed",
                        "plan.done",
                        "plan.called-off");
    }

    @Test
    void every_read_model_is_fed_and_both_neighbours_are_heard() {
        assertThat(projections.stream().map(Projection::name))
                .containsExactlyInAnyOrder(
                        "band",
                        "consent",
                        "cut-plan",
                        "cut-policy",
                        "host-check",
                        "mesh-piece",
                        "site",
                        "tree",
                        "work-plan");
        assertThat(handlers.stream().map(ReceivedHandler::source))
                .containsExactlyInAnyOrder("/bandtrail/inspections", "/bandtrail/supply-stock");
    }

    @Test
    void the_migrations_ran() {
        assertThat(jdbc.sql("SELECT version FROM flyway_schema_history WHERE success ORDER BY installed_rank")
                        .query(String.class)
                        .list())
                .contains("001", "005", "020", "021", "022", "023", "024", "025");
    }

    @Test
    void there_is_a_policy_from_the_start_with_its_source() {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode first = new Http(port)
                .get("/policies/cut-lengths")
                .body()
                .path("rows")
                .valueStream()
                .toList()
                .getLast();
        assertThat(first.path("version").asInt()).isOne();
        assertThat(first.path("source").asString()).contains("Common practice");
        assertThat(first.path("values").path("tapeOverlapMm").asInt()).isEqualTo(50);
        assertThat(first.path("values").path("girthMinimumMm").asInt()).isEqualTo(479);
    }

    @Test
    void the_interface_is_described_and_the_service_says_that_it_lives() {
        Http http = new Http(port);
        JsonNode paths = http.get("/v3/api-docs").body().path("paths");
        assertThat(paths.propertyNames())
                .contains(
                        "/sites",
                        "/trees",
                        "/trees/{treeId}",
                        "/trees/{treeId}/girths",
                        "/tree-imports/preview",
                        "/tree-imports/{importId}/store",
                        "/policies/cut-lengths",
                        "/proposals",
                        "/bands",
                        "/bands/check",
                        "/bands/sync",
                        "/bands/{bandId}",
                        "/feed");
        assertThat(paths.path("/bands").path("post").path("description").asString())
                .isNotBlank();
        assertThat(http.get("/actuator/health").body().path("status").asString())
                .isEqualTo("UP");
    }
}
