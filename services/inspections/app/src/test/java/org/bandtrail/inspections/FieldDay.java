package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.BandSamples;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import tools.jackson.databind.JsonNode;

/** A day in the field against the running service: bands get fitted, visits are sent, bands are read. */
record FieldDay(Door door, Work work, Bands bands, Projectors projectors) {

    /** Site-installs told that the band hangs on tree T-1 since day 1. */
    void fit(String band, String reel, long mm) {
        work.inOneTransaction(() -> bands.tell(new HearOfFitting(
                new BandId(band),
                "FIT-" + band,
                BandSamples.TRUNK,
                BandSamples.DOER,
                List.of(Portion.tape(new ReelId(reel), Length.ofMm(mm))),
                BandSamples.onDay(1))));
    }

    /** A visit on 4 May as a device sends it. */
    static String visit(UUID command, String visit, String band, String more) {
        return """
                {"commandId":"%s","visitId":"%s","bandId":"%s","personId":"P-07","crewId":"C-1","answer":"read",
                 "happenedAt":"2026-05-04T08:00:00Z"%s}""".formatted(command, visit, band, more);
    }

    /** The part of a visit that renews the tape. */
    static String renewal(String reel, String bag) {
        return ",\"replace\":{\"tape\":{\"reelId\":\"%s\",\"length\":\"1210 mm\"},\"bagId\":\"%s\"}"
                .formatted(reel, bag);
    }

    /** The band as people see it, once everything told so far is in. */
    JsonNode band(String band) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return door.get("/bands/" + band).body();
    }
}
