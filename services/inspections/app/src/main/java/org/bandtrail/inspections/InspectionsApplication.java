package org.bandtrail.inspections;

import org.bandtrail.eventexchange.EventExchangeWiring;
import org.bandtrail.eventstore.EventStoreWiring;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Import;

/** Starts inspections alone, against the PostgreSQL that {@code inspections.properties} names. */
@SpringBootApplication
@Import({EventStoreWiring.class, EventExchangeWiring.class})
public class InspectionsApplication {

    /** Starts the service; arguments override properties, such as {@code --server.port=8203}. */
    public static void main(String[] arguments) {
        System.setProperty("axoniq.update-checker.disabled", "true");
        System.setProperty("spring.config.name", "inspections");
        SpringApplication.run(InspectionsApplication.class, arguments);
    }
}
