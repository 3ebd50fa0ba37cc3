package org.bandtrail.frontdesk.grants;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Funding;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Grants and sites put beside each other. */
@Component
class SitesOfGrants {
    private static final Logger LOG = LoggerFactory.getLogger(SitesOfGrants.class);
    private final Finance finance;
    private final SiteInstalls installs;

    SitesOfGrants(Finance finance, SiteInstalls installs) {
        this.finance = finance;
        this.installs = installs;
    }

    /**
     * How a grant stands.
     *
     * @param spentMinor spent in its currency, in minor units
     * @param spentOutside of that, in months in which it was not good
     */
    record Standing(Funding.Grant grant, long spentMinor, long spentOutside) {
        /** Minor units left; below zero if more was spent. */
        public long leftMinor() {
            return grant.amount().minor() - spentMinor;
        }

        /** Part of the amount that was spent, in percent, for drawing. */
        public double percent() {
            return Math.clamp(100.0 * spentMinor / grant.amount().minor(), 0, 100);
        }

        /** Whether it is good on this day. */
        public boolean good(LocalDate day) {
            return !day.isBefore(grant.from()) && !day.isAfter(grant.until());
        }
    }

    /** Every grant with what was spent of it. */
    List<Standing> standing() {
        Map<String, Funding.GrantSpend> spent = finance.spentByGrant().stream()
                .collect(Collectors.toMap(Funding.GrantSpend::grantId, Function.identity()));
        return finance.grants().stream()
                .map(grant -> {
                    Funding.GrantSpend of = spent.get(grant.grantId());
                    return new Standing(grant, of == null ? 0 : of.spentMinor(), of == null ? 0 : of.outsideMinor());
                })
                .toList();
    }

    /** The shares of each site, the newest first. */
    Map<String, List<Funding.SiteShares>> shares() {
        Map<String, List<Funding.SiteShares>> bySite = new TreeMap<>();
        finance.shares()
                .forEach(version -> bySite.computeIfAbsent(version.siteId(), unused -> new ArrayList<>())
                        .addFirst(version));
        return bySite;
    }

    /** Names of sites; none while site-installs is silent, because amounts do not depend on them. */
    Map<String, String> names() {
        try {
            return installs.sites().stream()
                    .collect(Collectors.toMap(
                            Installs.Site::siteId, Installs.Site::name, (first, second) -> first, TreeMap::new));
        } catch (NeighbourSilent silent) {
            LOG.warn("Sites are shown without their names: {}", silent.getMessage());
            return Map.of();
        }
    }
}
