package org.bandtrail.siteinstalls.planmaking;

import java.io.IOException;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;

/** Reads the data that plans are made with. */
@Configuration(proxyBeanMethods = false)
class PlanMakingWiring {

    @Bean
    CrewHours crewHours() throws IOException {
        try (var file = new ClassPathResource("defaults/crew-hours.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(file, CrewHours.class);
        }
    }
}
