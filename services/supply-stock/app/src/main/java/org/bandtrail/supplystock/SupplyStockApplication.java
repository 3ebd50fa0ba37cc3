package org.bandtrail.supplystock;

import org.bandtrail.eventexchange.EventExchangeWiring;
import org.bandtrail.eventstore.EventStoreWiring;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Import;

/**
 * Starts supply stock alone against a given PostgreSQL; see {@code supply-stock.properties} for what it needs to know.
 */
@SpringBootApplication
@Import({EventStoreWiring.class, EventExchangeWiring.class})
public class SupplyStockApplication {

    /** Command line: any Spring Boot property, for example {@code --spring.datasource.url=jdbc:postgresql://...}. */
    public static void main(String[] arguments) {
        System.setProperty("spring.config.name", "supply-stock");
        SpringApplication.run(SupplyStockApplication.class, arguments);
    }
}
