package org.bandtrail.frontdesk.neighbours;

import org.bandtrail.frontdesk.FrontDeskSettings;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.json.JsonMapper;

/** Where the three services are, from the settings. */
@Configuration(proxyBeanMethods = false)
class NeighboursWiring {

    @Bean
    SupplyStock supplyStock(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new SupplyStock(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Finance finance(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Finance(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    LedgerReading ledgerReading(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new LedgerReading(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Kits kits(@Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Kits(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Counting counting(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Counting(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Purchasing purchasing(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Purchasing(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Invoicing invoicing(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Invoicing(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    Tracing tracing(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Tracing(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    DepotWork depotWork(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new DepotWork(new Neighbour("supply-stock", url, settings.serviceKey(), json));
    }

    @Bean
    SiteInstalls siteInstalls(
            @Value("${bandtrail.feeds.site-installs.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new SiteInstalls(new Neighbour("site-installs", url, settings.serviceKey(), json));
    }

    @Bean
    Inspections inspections(
            @Value("${bandtrail.feeds.inspections.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Inspections(new Neighbour("inspections", url, settings.serviceKey(), json));
    }
}
