package org.bandtrail.siteinstalls.species;

import java.io.IOException;
import java.io.InputStream;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;

/** Reads the book of species that comes with the house. */
@Configuration(proxyBeanMethods = false)
class SpeciesWiring {
    @Bean
    SpeciesBook speciesBook() throws IOException {
        return read();
    }

    /** The book of {@code defaults/species.json}. */
    static SpeciesBook read() throws IOException {
        try (InputStream file = new ClassPathResource("defaults/species.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(file, SpeciesBook.class);
        }
    }
}
