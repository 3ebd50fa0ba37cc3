package org.bandtrail.eventexchange;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.bandtrail.eventexchange.entry.EntryWiring;
import org.bandtrail.eventexchange.overview.OverviewWiring;
import org.bandtrail.eventstore.AppendOrder;
import org.bandtrail.eventstore.Work;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * Everything a service needs to tell and to hear: it imports this class, sets {@code bandtrail.service-name},
 * {@code bandtrail.service-key} and {@code bandtrail.feeds.<name>.url}, and declares a {@link ReceivedHandler} for each
 * foreign service. Works on the beans of the event store.
 */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ExchangeSettings.class)
@Import({EntryWiring.class, FeedController.class, OverviewWiring.class})
public class EventExchangeWiring {

    @Bean
    OutboxBell outboxBell() {
        return new OutboxBell();
    }

    @Bean
    Outbox outbox(JdbcClient jdbc, OutboxBell bell) {
        return new Outbox(jdbc, bell);
    }

    @Bean
    OutboxPages outboxPages(
            JdbcClient jdbc, PlatformTransactionManager transactions, OutboxBell bell, ExchangeSettings settings) {
        var order = new AppendOrder(jdbc, transactions, "outbox", "position");
        return new OutboxPages(jdbc, order, bell, ExchangeSettings.sourceOf(settings.serviceName()));
    }

    /** Commands sent by a handler commit with the inbox row and the position. */
    @Bean
    InOneTransaction inOneTransaction(Work work) {
        return handling -> work.inOneTransaction(() -> {
            handling.run();
            return true;
        });
    }

    @Bean
    FeedPositions feedPositions(JdbcClient jdbc) {
        return new FeedPositions(jdbc);
    }

    /**
     * A reader for each foreign service that a handler is there for.
     *
     * @throws IllegalStateException if a handler's service has no url: an unread feed must not go unnoticed
     */
    @Bean
    FeedReaders feedReaders(
            ExchangeSettings settings,
            ObjectProvider<ReceivedHandler> handlers,
            FeedPositions positions,
            JdbcClient jdbc,
            InOneTransaction inOneTransaction,
            OutboxBell bell) {
        if (!settings.readFeeds()) {
            return new FeedReaders(List.of(), bell);
        }
        String replica = ManagementFactory.getRuntimeMXBean().getName() + "/" + UUID.randomUUID();
        Map<String, List<ReceivedHandler>> bySource = handlers.orderedStream()
                .collect(Collectors.groupingBy(ReceivedHandler::source, TreeMap::new, Collectors.toList()));
        List<FeedReader> readers = new ArrayList<>();
        bySource.forEach((source, willing) -> readers.add(new FeedReader(
                source,
                new HttpFeed(urlOf(source, settings), settings.serviceKey()),
                willing,
                positions,
                new Inbox(jdbc),
                inOneTransaction,
                replica,
                FeedPace.USUAL)));
        return new FeedReaders(readers, bell);
    }

    private static String urlOf(String source, ExchangeSettings settings) {
        String name = source.substring(source.lastIndexOf('/') + 1);
        ExchangeSettings.ForeignFeed feed = settings.feeds().get(name);
        if (feed == null) {
            throw new IllegalStateException("bandtrail.feeds.%s.url must be set, because events of %s are handled here."
                    .formatted(name, source));
        }
        return feed.url();
    }
}
