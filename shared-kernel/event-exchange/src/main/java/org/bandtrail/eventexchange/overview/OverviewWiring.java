package org.bandtrail.eventexchange.overview;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Shows the feeds over HTTP. Brought in by EventExchangeWiring. */
@Configuration(proxyBeanMethods = false)
@Import(FeedsController.class)
public class OverviewWiring {
    @Bean
    FeedStatuses feedStatuses(JdbcClient jdbc) {
        return new FeedStatuses(jdbc);
    }
}
