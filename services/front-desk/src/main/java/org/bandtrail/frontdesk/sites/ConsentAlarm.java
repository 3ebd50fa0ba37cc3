package org.bandtrail.frontdesk.sites;

import java.util.Comparator;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.wording.Days;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Says whose consent ends soon or has ended with bands up. */
@Component
public class ConsentAlarm {
    private static final Logger LOG = LoggerFactory.getLogger(ConsentAlarm.class);
    private static final int NAMED = 4;
    private final Sites sites;

    ConsentAlarm(Sites sites) {
        this.sites = sites;
    }

    /**
     * What the lead reads first.
     *
     * @param begins how many need their owner, or why that is not known; empty if none does
     * @param named the most urgent sites
     * @param others how many more there are
     */
    public record Said(String begins, List<Named> named, int others) {
        /** Whether there is anything to say. */
        public boolean speaks() {
            return !begins.isEmpty();
        }
    }

    /** One site, and how it stands in words. */
    public record Named(String siteId, String name, String standing) {}

    /** What is to be said today: bands without consent come first, then the consent that ends first. */
    public Said today(Days days) {
        try {
            return of(sites.standings(days.today()).rows(), new StandingWords(days));
        } catch (NeighbourSilent silent) {
            LOG.warn("The standings of the consents could not be read", silent);
            return new Said(
                    "Whether a consent ends soon is not known: the field service does not answer.", List.of(), 0);
        }
    }

    static Said of(List<Ground.Standing> standings, StandingWords words) {
        List<Ground.Standing> urgent = standings.stream()
                .filter(Ground.Standing::warns)
                .sorted(Comparator.comparing(
                                (Ground.Standing site) -> !site.standing().equals("BANDS_WITHOUT_CONSENT"))
                        .thenComparing(Ground.Standing::lastDay, Comparator.nullsFirst(Comparator.naturalOrder()))
                        .thenComparing(Ground.Standing::siteId))
                .toList();
        if (urgent.isEmpty()) {
            return new Said("", List.of(), 0);
        }
        String begins =
                urgent.size() == 1 ? "One site needs its owner: " : urgent.size() + " sites need their owners: ";
        return new Said(
                begins,
                urgent.stream()
                        .limit(NAMED)
                        .map(site -> new Named(site.siteId(), site.siteName(), words.of(site)))
                        .toList(),
                Math.max(0, urgent.size() - NAMED));
    }
}
