package org.bandtrail.frontdesk.spend;

import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Funding;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.web.context.annotation.RequestScope;

/** Names of what spend is added up by. Without them the amounts are complete all the same, so silence is no failure. */
@Component
@RequestScope
class Names {
    private static final Logger LOG = LoggerFactory.getLogger(Names.class);
    private final SiteInstalls installs;
    private final SupplyStock stock;
    private final Finance finance;
    private boolean missing;

    Names(SiteInstalls installs, SupplyStock stock, Finance finance) {
        this.installs = installs;
        this.stock = stock;
        this.finance = finance;
    }

    /** Names by identity for this way of adding up; empty where identities say enough. */
    Map<String, String> of(String by) {
        return switch (by) {
            case "site", "tree" -> sites();
            case "item" ->
                asked(() ->
                        stock.items().stream().collect(Collectors.toMap(Stock.Item::materialCode, Stock.Item::name)));
            case "crew" ->
                asked(() -> stock.crews().stream().collect(Collectors.toMap(Stock.Crew::crewId, Stock.Crew::name)));
            case "grant" ->
                asked(() -> finance.grants().stream()
                        .collect(Collectors.toMap(Funding.Grant::grantId, Funding.Grant::name)));
            default -> Map.of();
        };
    }

    /** Names of sites. */
    Map<String, String> sites() {
        return asked(
                () -> installs.sites().stream().collect(Collectors.toMap(Installs.Site::siteId, Installs.Site::name)));
    }

    /** Whether some names could not be had. */
    boolean missing() {
        return missing;
    }

    private Map<String, String> asked(Supplier<Map<String, String>> question) {
        try {
            return question.get();
        } catch (NeighbourSilent silent) {
            LOG.warn("Spend is shown without names: {}", silent.getMessage());
            missing = true;
            return Map.of();
        }
    }
}
