package org.bandtrail.siteinstalls.policies;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.KernelJson;
import org.bandtrail.eventstore.RevisionStep;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Declares the policy to the event store and publishes the first version, so that there is always one in force. */
@Configuration(proxyBeanMethods = false)
class CutPolicyWiring {
    /** Names the publishing of the first version, so that it is done once however often the service starts. */
    private static final UUID FIRST_VERSION = UUID.fromString("019a0000-0000-7000-8000-000000000001");

    private static final PersonId SYSTEM = new PersonId("SYSTEM");

    /** The content of {@code defaults/cut-lengths.json}. */
    record Defaults(LocalDate validFrom, String source, String reason, CutLengths values) {
        static Defaults read() throws java.io.IOException {
            JsonMapper json =
                    JsonMapper.builder().addModule(KernelJson.stored()).build();
            try (var file = new ClassPathResource("defaults/cut-lengths.json").getInputStream()) {
                return json.readValue(file, Defaults.class);
            }
        }
    }

    @Bean
    AggregateOf<?> cutPolicyAggregate() {
        return CutPolicyAggregate.DECLARED;
    }

    /** What the trade says about each value. */
    @Bean
    List<ValueGuide> policyValueGuides() {
        return ValueGuide.read();
    }

    /**
     * Revision 1 was always of the house and without an end. What it did not name is set so that nothing calculated or
     * asked by it changes: one band, as wide as was asked about, under mesh without a seam, wider than the tape by the
     * least that can be measured, and closed below, as wildlife hospitals ask (trade practice).
     */
    @Bean
    RevisionStep cutLengthsPublishedTwo() {
        return new RevisionStep("cut-policy.published", 1, published -> {
            published.putObject("scope").putNull("programme").putNull("pest");
            published.putNull("validUntil");
            ObjectNode values = (ObjectNode) published.required("values");
            long widest = values.required("tape").required("widest").asLong();
            values.putObject("setup")
                    .put("bandsPerTree", 1)
                    .put("bandWidth", widest)
                    .put("guard", CutLengths.GuardType.MESH.name())
                    .put("guardWider", 1)
                    .put("seam", 0)
                    .put("closedBelow", true);
        });
    }

    @Bean
    ApplicationRunner firstCutPolicy(Work work, Commands commands, Clock clock) {
        return arguments -> {
            Defaults first = Defaults.read();
            // The content of a receipt must not change with a later edit of the file: the first version stays.
            work.once(FIRST_VERSION, "first cut-length policy", Published.class, () -> {
                commands.send(new PublishCutLengths(
                        CutPolicy.ID,
                        first.values(),
                        PolicyScope.HOUSE,
                        first.validFrom(),
                        null,
                        first.source(),
                        first.reason(),
                        SYSTEM,
                        Occurred.at(clock.instant())));
                return new Published(first.validFrom());
            });
        };
    }

    record Published(LocalDate validFrom) {}
}
