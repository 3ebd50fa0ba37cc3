package org.bandtrail.frontdesk.removals;

import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.wording.Days;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Says which bands must come off. */
@Component
public class RemovalAlarm {
    private static final Logger LOG = LoggerFactory.getLogger(RemovalAlarm.class);
    private final BandCare care;

    RemovalAlarm(BandCare care) {
        this.care = care;
    }

    /** The sentence for all bands, null if none is past or near its day. */
    public @Nullable String everywhere(Days days) {
        return words(null, null, days);
    }

    /** The sentence for one site, null if none is past or near its day. */
    public @Nullable String atSite(String site, Days days) {
        return words(site, null, days);
    }

    /** The sentence for one tree, null if none is past or near its day. */
    public @Nullable String onTree(String tree, Days days) {
        return words(null, tree, days);
    }

    private @Nullable String words(@Nullable String site, @Nullable String tree, Days days) {
        try {
            return words(care.alarm(site, tree), days);
        } catch (NeighbourSilent silent) {
            LOG.warn("The removal alarm could not be read", silent);
            return "Whether a band must come off is not known: the field service does not answer.";
        }
    }

    /** The sentence for these figures, null if they are all zero. */
    static @Nullable String words(BandCare.Alarm alarm, Days days) {
        String since = days.day(alarm.first());
        if (alarm.past() > 0 && alarm.near() > 0) {
            return "%s be off already, the first since %s; %s more must come off within %d days."
                    .formatted(bands(alarm.past(), "should"), since, number(alarm.near()), alarm.noticeDays());
        }
        if (alarm.past() > 0) {
            return "%s be off already%s %s."
                    .formatted(
                            bands(alarm.past(), "should"), alarm.past() == 1 ? ", since" : ", the first since", since);
        }
        if (alarm.near() > 0) {
            return "%s come off soon%s %s."
                    .formatted(bands(alarm.near(), "must"), alarm.near() == 1 ? ", by" : ", the first by", since);
        }
        return null;
    }

    private static String bands(long count, String verb) {
        return (count == 1 ? "One band " : count + " bands ") + verb;
    }

    private static String number(long count) {
        return count == 1 ? "one" : Long.toString(count);
    }
}
