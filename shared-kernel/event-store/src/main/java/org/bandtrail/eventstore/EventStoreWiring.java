package org.bandtrail.eventstore;

import java.time.Clock;
import java.util.List;
import javax.sql.DataSource;
import org.axonframework.commandhandling.CommandBus;
import org.axonframework.commandhandling.SimpleCommandBus;
import org.axonframework.common.jdbc.ConnectionProvider;
import org.axonframework.common.jdbc.UnitOfWorkAwareConnectionProviderWrapper;
import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.eventhandling.DomainEventMessage;
import org.axonframework.eventsourcing.CachingEventSourcingRepository;
import org.axonframework.eventsourcing.EventSourcingRepository;
import org.axonframework.eventsourcing.eventstore.EmbeddedEventStore;
import org.axonframework.eventsourcing.eventstore.EventStore;
import org.axonframework.modelling.command.AggregateAnnotationCommandHandler;
import org.axonframework.modelling.command.AnnotationCommandTargetResolver;
import org.axonframework.modelling.command.CommandTargetResolver;
import org.axonframework.modelling.command.VersionedAggregateIdentifier;
import org.axonframework.serialization.upcasting.event.EventUpcaster;
import org.axonframework.serialization.upcasting.event.EventUpcasterChain;
import org.axonframework.serialization.upcasting.event.NoOpEventUpcaster;
import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import org.axonframework.spring.jdbc.SpringDataSourceConnectionProvider;
import org.axonframework.spring.messaging.unitofwork.SpringTransactionManager;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.ObjectMapper;

/**
 * Declares every Axon part by hand. Axon's own auto-configuration orders itself after class names of Spring Boot 3; on
 * Boot 4 it is evaluated too early and a service can come up without transactions and say nothing.
 */
@Configuration(proxyBeanMethods = false)
@Import(ProjectorsWiring.class)
public class EventStoreWiring {

    /** The machine's time, unless whoever starts the service gives it another clock. */
    @Bean
    @ConditionalOnMissingBean
    Clock clock() {
        return Clock.systemUTC();
    }

    /** How kernel types look over HTTP; Spring Boot adds it to its mapper. */
    @Bean
    JacksonModule kernelHttpJson() {
        return KernelJson.http();
    }

    @Bean
    TransactionManager axonTransactions(PlatformTransactionManager transactions) {
        return new SpringTransactionManager(transactions);
    }

    @Bean
    ConnectionProvider axonConnections(DataSource dataSource) {
        return new UnitOfWorkAwareConnectionProviderWrapper(new SpringDataSourceConnectionProvider(dataSource));
    }

    @Bean
    StoredNames storedNames(List<AggregateOf<?>> aggregates) {
        return new StoredNames(aggregates);
    }

    @Bean
    StoredNameSerializer storedNameSerializer(StoredNames names, ObjectProvider<StoredJson> own) {
        List<JacksonModule> modules = new java.util.ArrayList<>(List.of(KernelJson.stored()));
        own.orderedStream().map(StoredJson::module).forEach(modules::add);
        return StoredNameSerializer.of(names, modules);
    }

    @Bean
    EventUpcaster upcasters(ObjectProvider<SingleEventUpcaster> own) {
        List<SingleEventUpcaster> chain = own.orderedStream().toList();
        return chain.isEmpty() ? NoOpEventUpcaster.INSTANCE : new EventUpcasterChain(chain);
    }

    @Bean
    JournalEngine journalEngine(
            ConnectionProvider connections,
            TransactionManager transactions,
            StoredNameSerializer serializer,
            EventUpcaster upcasters) {
        return JournalEngine.on(connections, transactions, serializer, upcasters);
    }

    @Bean
    FirstEvents firstEvents(JournalEngine engine, ObjectProvider<WhenAppended> listeners) {
        return new FirstEvents(engine, listeners.orderedStream().toList());
    }

    @Bean
    EventStore eventStore(JournalEngine engine, ObjectProvider<WhenAppended> listeners) {
        EmbeddedEventStore store =
                EmbeddedEventStore.builder().storageEngine(engine).build();
        listeners
                .orderedStream()
                .forEach(listener -> store.subscribe(events -> listener.appended(events.stream()
                        .map(DomainEventMessage.class::cast)
                        .map(event -> new AppendedEvent(
                                java.util.UUID.fromString(event.getIdentifier()),
                                event.getAggregateIdentifier(),
                                event.getSequenceNumber(),
                                event.getPayload()))
                        .toList())));
        return store;
    }

    @Bean
    CommandBus commandBus(
            List<AggregateOf<?>> aggregates,
            EventStore store,
            @Value("${bandtrail.cached-aggregates:20000}") long cached) {
        CommandBus bus = SimpleCommandBus.builder().build();
        AggregateCache cache = new AggregateCache(cached);
        aggregates.forEach(aggregate -> subscribe(bus, aggregate, store, cache));
        return bus;
    }

    private static <T> void subscribe(
            CommandBus bus, AggregateOf<T> aggregate, EventStore store, AggregateCache cache) {
        CachingEventSourcingRepository<T> repository = EventSourcingRepository.builder(aggregate.shell())
                .eventStore(store)
                .cache(cache)
                .build();
        CommandTargetResolver names = AnnotationCommandTargetResolver.builder().build();
        AggregateAnnotationCommandHandler.<T>builder()
                .aggregateType(aggregate.shell())
                .repository(repository)
                .commandTargetResolver(command -> new VersionedAggregateIdentifier(
                        aggregate.storedId(names.resolveTarget(command).getIdentifier()), null))
                .build()
                .subscribe(bus);
    }

    @Bean
    Commands commands(CommandBus bus, List<AggregateOf<?>> aggregates) {
        return new Commands(bus, aggregates);
    }

    @Bean
    Work work(
            TransactionManager transactions,
            JdbcClient jdbc,
            ObjectMapper json,
            Clock clock,
            ObjectProvider<Projectors> projectors) {
        return new Work(
                transactions, new CommandReceipts(jdbc, json, clock), () -> projectors.ifAvailable(Projectors::wake));
    }

    @Bean
    AppendOrder eventOrder(JdbcClient jdbc, PlatformTransactionManager transactions) {
        return new AppendOrder(jdbc, transactions, "domain_event_entry", "global_index");
    }

    @Bean
    EventLog eventLog(
            JdbcClient jdbc, AppendOrder eventOrder, StoredNameSerializer serializer, EventUpcaster upcasters) {
        return new EventLog(jdbc, eventOrder, serializer, upcasters);
    }
}
