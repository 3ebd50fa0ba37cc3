package org.bandtrail.siteinstalls.bands;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.bands.BandEvent.BandFitted;
import org.bandtrail.siteinstalls.bands.BandEvent.BandTakenDown;
import org.bandtrail.siteinstalls.bands.BandEvent.PiecesReplaced;
import org.jspecify.annotations.Nullable;

/**
 * A band on its way into its row. Which fact counts is decided by {@link Band}; this adds what only the row shows.
 *
 * @param band as it stands
 * @param treeId the tree, null if not told yet
 * @param siteId the site, null if not told yet
 * @param fit what the last fitting told, null before one
 * @param pins the newest fasteners, null if nobody told
 */
record BandRow(
        Band band,
        @Nullable TreeId treeId,
        @Nullable SiteId siteId,
        @Nullable Fit fit,
        @Nullable Pins pins) {
    static final BandRow NONE = new BandRow(Band.NONE, null, null, null, null);

    /** What only a fitting tells. */
    record Fit(
            String crewId,
            String personId,
            Length girth,
            Length height,
            LocalDate mustRemoveBy,
            int policyVersion,
            FitDetails details) {
        static Fit of(BandFitted fitted) {
            return new Fit(
                    fitted.crewId().value(),
                    fitted.personId().value(),
                    fitted.girth(),
                    fitted.height(),
                    fitted.mustRemoveBy(),
                    fitted.policyVersion(),
                    fitted.details());
        }
    }

    /** Fasteners and since when they hold. */
    record Pins(@Nullable Fasteners fasteners, Instant since) {}

    BandId bandId() {
        if (band.bandId() == null) {
            throw new IllegalStateException("A row of a band nobody told of.");
        }
        return band.bandId();
    }

    BandRow after(BandEvent event) {
        Band next = band.evolve(event);
        return switch (event) {
            case BandFitted fitted -> afterFit(next, fitted);
            case PiecesReplaced replaced ->
                new BandRow(
                        next,
                        treeId == null ? replaced.treeId() : treeId,
                        siteId == null ? replaced.siteId() : siteId,
                        fit,
                        replaced.fasteners() == null
                                ? pins
                                : newer(new Pins(
                                        replaced.fasteners(), replaced.when().happened())));
            case BandTakenDown down ->
                new BandRow(
                        next,
                        treeId == null ? down.treeId() : treeId,
                        siteId == null ? down.siteId() : siteId,
                        fit,
                        pins);
        };
    }

    private BandRow afterFit(Band next, BandFitted fitted) {
        Pins newest = newer(new Pins(fitted.fasteners(), fitted.when().happened()));
        boolean lastFit = band.fitted() == null || !fitted.when().happened().isBefore(band.fitted());
        return lastFit
                ? new BandRow(next, fitted.treeId(), fitted.siteId(), Fit.of(fitted), newest)
                : new BandRow(next, treeId, siteId, fit, newest);
    }

    private Pins newer(Pins heard) {
        return pins == null || !heard.since().isBefore(pins.since()) ? heard : pins;
    }
}
