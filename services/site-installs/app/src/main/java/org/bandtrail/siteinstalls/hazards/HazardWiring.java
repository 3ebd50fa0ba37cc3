package org.bandtrail.siteinstalls.hazards;

import java.io.IOException;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads the kinds of hazards from their file. */
@Configuration(proxyBeanMethods = false)
class HazardWiring {

    @Bean
    HazardKinds hazardKinds() throws IOException {
        try (var file = new ClassPathResource("defaults/hazards.json").getInputStream()) {
            return new HazardKinds(
                    JsonMapper.builder().build().readValue(file, new TypeReference<List<HazardKind>>() {}));
        }
    }
}
