package org.bandtrail.frontdesk.neighbours;

import org.bandtrail.frontdesk.FrontDeskSettings;
import org.bandtrail.frontdesk.neighbours.depot.Counting;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.depot.Tracing;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.neighbours.field.TreesTwice;
import org.bandtrail.frontdesk.neighbours.field.WorkPlanning;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.LedgerReading;
import org.bandtrail.frontdesk.neighbours.money.Variances;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.json.JsonMapper;

/** Where the three services are, from the settings. */
@Configuration(proxyBeanMethods = false)
class NeighboursWiring {

    @Bean("supply-stock-service")
    Neighbour supplyStockNeighbour(
            @Value("${bandtrail.feeds.supply-stock.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Neighbour("supply-stock", url, settings.serviceKey(), json);
    }

    @Bean("site-installs-service")
    Neighbour siteInstallsNeighbour(
            @Value("${bandtrail.feeds.site-installs.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Neighbour("site-installs", url, settings.serviceKey(), json);
    }

    @Bean("inspections-service")
    Neighbour inspectionsNeighbour(
            @Value("${bandtrail.feeds.inspections.url}") String url, FrontDeskSettings settings, JsonMapper json) {
        return new Neighbour("inspections", url, settings.serviceKey(), json);
    }

    @Bean
    SupplyStock supplyStock(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new SupplyStock(neighbour);
    }

    @Bean
    Finance finance(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Finance(neighbour);
    }

    @Bean
    LedgerReading ledgerReading(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new LedgerReading(neighbour);
    }

    @Bean
    Kits kits(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Kits(neighbour);
    }

    @Bean
    Counting counting(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Counting(neighbour);
    }

    @Bean
    Purchasing purchasing(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Purchasing(neighbour);
    }

    @Bean
    Invoicing invoicing(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Invoicing(neighbour);
    }

    @Bean
    Variances variances(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Variances(neighbour);
    }

    @Bean
    Tracing tracing(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new Tracing(neighbour);
    }

    @Bean
    DepotWork depotWork(@Qualifier("supply-stock-service") Neighbour neighbour) {
        return new DepotWork(neighbour);
    }

    @Bean
    SiteInstalls siteInstalls(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new SiteInstalls(neighbour);
    }

    @Bean
    TreeCare treeCare(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new TreeCare(neighbour);
    }

    @Bean
    BandCare bandCare(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new BandCare(neighbour);
    }

    @Bean
    TreesTwice treesTwice(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new TreesTwice(neighbour);
    }

    @Bean
    WorkPlanning workPlanning(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new WorkPlanning(neighbour);
    }

    @Bean
    Sites sites(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new Sites(neighbour);
    }

    @Bean
    Policies policies(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new Policies(neighbour);
    }

    @Bean
    Inspections inspections(@Qualifier("inspections-service") Neighbour neighbour) {
        return new Inspections(neighbour);
    }

    @Bean
    CutPlanning cutPlanning(@Qualifier("site-installs-service") Neighbour neighbour) {
        return new CutPlanning(neighbour);
    }
}
