package org.bandtrail.eventstore;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.axonframework.common.jdbc.ConnectionProvider;
import org.axonframework.eventhandling.tokenstore.TokenStore;
import org.axonframework.eventhandling.tokenstore.jdbc.JdbcTokenStore;
import org.axonframework.eventhandling.tokenstore.jdbc.TokenSchema;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Declares the readers of the event store and where their positions are kept. */
@Configuration(proxyBeanMethods = false)
class ProjectorsWiring {

    @Bean
    TokenStore tokenStore(ConnectionProvider connections, StoredNameSerializer serializer) throws UnknownHostException {
        return JdbcTokenStore.builder()
                .connectionProvider(connections)
                .serializer(serializer)
                .schema(TokenSchema.builder()
                        .setTokenTable("token_entry")
                        .setProcessorNameColumn("processor_name")
                        .setSegmentColumn("segment")
                        .setTokenColumn("token")
                        .setTokenTypeColumn("token_type")
                        .setTimestampColumn("timestamp")
                        .setOwnerColumn("owner")
                        .build())
                .claimTimeout(Duration.ofSeconds(10))
                .nodeId(nodeId())
                .build();
    }

    @Bean
    Projectors projectors(
            ObjectProvider<Projection> projections,
            EventLog eventLog,
            TokenStore tokenStore,
            PlatformTransactionManager transactionManager,
            StoredNames names,
            StoredNameSerializer serializer,
            JdbcClient jdbc)
            throws UnknownHostException {
        TransactionTemplate transactions = new TransactionTemplate(transactionManager);
        List<Projector> each = projections
                .orderedStream()
                .map(projection -> new Projector(projection, eventLog, tokenStore, transactions, names))
                .toList();
        Claims claims = new Claims(jdbc, serializer, nodeId(), Clock.systemUTC());
        SharedLook sharedLook = new SharedLook(each, eventLog, claims, transactions);
        return new Projectors(each, sharedLook, eventLog, tokenStore, transactions, jdbc);
    }

    /** Names this replica in the claims of the readers; another process or machine has another. */
    private static String nodeId() throws UnknownHostException {
        return ProcessHandle.current().pid() + "@" + InetAddress.getLocalHost().getHostName();
    }
}
