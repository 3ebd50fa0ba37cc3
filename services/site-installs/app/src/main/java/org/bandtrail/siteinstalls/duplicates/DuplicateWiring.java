package org.bandtrail.siteinstalls.duplicates;

import java.io.IOException;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;

/** Reads when two trees look like one. */
@Configuration(proxyBeanMethods = false)
class DuplicateWiring {
    /** The rules of {@code defaults/tree-duplicates.json}. */
    @Bean
    DuplicateRules duplicateRules() throws IOException {
        try (var file = new ClassPathResource("defaults/tree-duplicates.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(file, DuplicateRules.class);
        }
    }
}
