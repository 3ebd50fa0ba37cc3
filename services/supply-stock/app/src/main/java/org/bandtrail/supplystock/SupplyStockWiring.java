package org.bandtrail.supplystock;

import org.bandtrail.eventstore.StoredJson;
import org.bandtrail.eventstore.TextForm;
import org.bandtrail.supplystock.holdings.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.module.SimpleModule;

/** What the features of this service share in wiring: the text form of a place. */
@Configuration(proxyBeanMethods = false)
class SupplyStockWiring {

    @Bean
    StoredJson placesOnDisk() {
        return new StoredJson(places("places-stored"));
    }

    @Bean
    JacksonModule placesOverHttp() {
        return places("places-http");
    }

    private static SimpleModule places(String name) {
        SimpleModule module = new SimpleModule(name);
        TextForm.add(module, Place.class, Place::parse);
        return module;
    }
}
