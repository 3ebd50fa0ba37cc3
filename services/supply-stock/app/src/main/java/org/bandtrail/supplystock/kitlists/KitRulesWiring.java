package org.bandtrail.supplystock.kitlists;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads the published versions of the usual rule. */
@Configuration(proxyBeanMethods = false)
class KitRulesWiring {
    private static final String VERSIONS = "/defaults/kit-rules.json";

    @Bean
    KitRules kitRules() {
        try (InputStream in = KitRulesWiring.class.getResourceAsStream(VERSIONS)) {
            if (in == null) {
                throw new IllegalStateException(
                        "The rules for kit lists [%s] are not in this build.".formatted(VERSIONS));
            }
            return new KitRules(JsonMapper.shared().readValue(in, new TypeReference<List<KitRules.Version>>() {}));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
