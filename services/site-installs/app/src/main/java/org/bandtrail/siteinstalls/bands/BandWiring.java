package org.bandtrail.siteinstalls.bands;

import java.io.IOException;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.RevisionStep;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Declares the band to the event store. */
@Configuration(proxyBeanMethods = false)
class BandWiring {

    @Bean
    RemovalNotice removalNotice() throws IOException {
        try (var file = new ClassPathResource("defaults/removal-notice.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(file, RemovalNotice.class);
        }
    }

    @Bean
    AggregateOf<?> bandAggregate() {
        return BandAggregate.DECLARED;
    }

    /** Revision 1 knew one kind of device, the sticky band, and only one of it on a trunk. */
    @Bean
    RevisionStep bandFittedTwo() {
        return new RevisionStep("band.fitted", 1, fitted -> {
            ObjectNode details = fitted.putObject("details");
            details.put("device", FitDetails.STICKY_BAND);
            details.put("position", 1);
            details.putNull("deviation");
            details.putArray("photos");
            details.putNull("seam");
            details.putNull("guardClosedBelow");
            details.putNull("programme");
            details.putNull("pest");
            details.putArray("alsoCut");
            details.putArray("alsoCounted");
        });
    }
}
