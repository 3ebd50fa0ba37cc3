package org.bandtrail.supplystock;

import static org.assertj.core.api.Assertions.assertThat;

import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.axonframework.eventhandling.tokenstore.jdbc.JdbcTokenStore;
import org.axonframework.eventsourcing.eventstore.EmbeddedEventStore;
import org.axonframework.eventsourcing.eventstore.EventStore;
import org.axonframework.spring.messaging.unitofwork.SpringTransactionManager;
import org.bandtrail.eventstore.StoredNames;
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
                        "V010__reel_balance.sql",
                        "V011__batch_balance.sql",
                        "V012__item.sql",
                        "V013__depot_crew.sql",
                        "V014__kit.sql",
                        "V015__tree_site.sql");
    }

    @Test
    void every_aggregate_is_declared() {
        assertThat(names.all()).contains("reel.received", "batch.received", "item.registered", "depot.opened");
    }
}
