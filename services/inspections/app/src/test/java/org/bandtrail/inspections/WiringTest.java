package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.axonframework.eventhandling.tokenstore.jdbc.JdbcTokenStore;
import org.axonframework.eventsourcing.eventstore.EmbeddedEventStore;
import org.axonframework.eventsourcing.eventstore.EventStore;
import org.axonframework.spring.messaging.unitofwork.SpringTransactionManager;
import org.bandtrail.eventstore.StoredNames;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandSamples;
import org.bandtrail.inspections.bands.Bands;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A service can come up without transactions, without migrations or on another store and say nothing; this says it. */
@OnPostgres
class WiringTest {
    @Autowired
    EventStore eventStore;

    @Autowired
    TokenStore tokenStore;

    @Autowired
    TransactionManager transactions;

    @Autowired
    StoredNames names;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Work work;

    @Autowired
    Bands bands;

    @Test
    void events_tokens_and_transactions_are_on_postgres() {
        assertThat(eventStore).isInstanceOf(EmbeddedEventStore.class);
        assertThat(tokenStore).isInstanceOf(JdbcTokenStore.class);
        assertThat(transactions).isInstanceOf(SpringTransactionManager.class);
    }

    @Test
    void all_migrations_ran() {
        assertThat(jdbc.sql("SELECT script FROM flyway_schema_history WHERE success ORDER BY installed_rank")
                        .query(String.class)
                        .list())
                .contains(
                        "V001__event_store.sql",
                        "V005__event_exchange.sql",
                        "V040__bands.sql",
                        "V041__bags.sql",
                        "V042__visit_policy.sql");
    }

    @Test
    void every_aggregate_is_declared() {
        assertThat(names.all()).contains("band.visited", "bag.taken-away");
    }

    @Test
    void work_that_fails_leaves_neither_events_nor_anything_to_publish() {
        assertThatIllegalStateException()
                .isThrownBy(() -> work.inOneTransaction(() -> {
                    bands.tell(BandSamples.visited("V-ROLLBACK", 3, BandSamples.NOTHING_CAUGHT));
                    throw new IllegalStateException("the rest of the work fails");
                }));

        assertThat(count("SELECT count(*) FROM outbox WHERE data::text LIKE '%V-ROLLBACK%'"))
                .isZero();
        assertThat(count("SELECT count(*) FROM domain_event_entry"
                        + " WHERE convert_from(payload, 'UTF8') LIKE '%V-ROLLBACK%'"))
                .isZero();
    }

    private long count(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
