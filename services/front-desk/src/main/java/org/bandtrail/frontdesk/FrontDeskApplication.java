package org.bandtrail.frontdesk;

import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;

/** Starts the front desk on its own. Settings come from {@code front-desk.properties} and the environment. */
@SpringBootApplication
@ConfigurationPropertiesScan
public class FrontDeskApplication {

    /** Starts the pages on the port of {@code front-desk.properties}. */
    public static void main(String[] arguments) {
        new SpringApplicationBuilder(FrontDeskApplication.class)
                .properties("spring.config.name=front-desk")
                .run(arguments);
    }
}
