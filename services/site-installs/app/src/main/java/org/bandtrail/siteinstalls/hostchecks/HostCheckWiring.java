package org.bandtrail.siteinstalls.hostchecks;

import java.io.IOException;
import java.io.InputStream;
import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;

/** Declares host checks to the event store and reads the keys that come with the house. */
@Configuration(proxyBeanMethods = false)
class HostCheckWiring {
    @Bean
    AggregateOf<?> hostCheckAggregate() {
        return HostCheckAggregate.DECLARED;
    }

    @Bean
    HostKeys hostKeys() throws IOException {
        return read();
    }

    /** The keys of {@code defaults/host-keys.json}. */
    static HostKeys read() throws IOException {
        try (InputStream file = new ClassPathResource("defaults/host-keys.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(file, HostKeys.class);
        }
    }
}
