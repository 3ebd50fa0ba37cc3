package org.bandtrail.inspections.bands;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.BandCommand.RecordTeardown;
import org.bandtrail.inspections.bands.BandCommand.RecordVisit;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.LifeStage;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** Bands and what happens to them, for tests: band B-1 on tree T-1 of site S-1, visited by P-07. */
public final class BandSamples {
    public static final BandId BAND = new BandId("B-1");
    public static final Trunk TRUNK = new Trunk(new TreeId("T-1"), new SiteId("S-1"));
    public static final Doer DOER = new Doer(new CrewId("C-1"), new PersonId("P-07"), new PersonId("P-07"));
    public static final Judging JUDGING = new Judging(1, 90, 24);
    public static final Look NOTHING_CAUGHT = new Look(Answer.READ, 20, Map.of(), null, null);
    private static final Instant SEASON = Instant.parse("2026-05-01T08:00:00Z");

    private BandSamples() {}

    public static Occurred onDay(int day) {
        Instant happened = SEASON.plusSeconds(day * 86_400L);
        return new Occurred(happened, happened.plusSeconds(60));
    }

    public static Portion tape(String reel, long mm) {
        return Portion.tape(new ReelId(reel), Length.ofMm(mm));
    }

    public static Portion mesh(String reel, long mm) {
        return Portion.mesh(new ReelId(reel), Length.ofMm(mm));
    }

    public static Portion pins(String batch, long pieces) {
        return Portion.fasteners(new BatchId(batch), Pieces.of(pieces));
    }

    public static HearOfFitting fitted(int day, Portion... putUp) {
        return new HearOfFitting(BAND, "FIT-" + day, TRUNK, DOER, List.of(putUp), onDay(day));
    }

    public static RecordVisit visited(String visit, int day, Look look) {
        return new RecordVisit(BAND, visit, look, null, JUDGING, DOER, onDay(day));
    }

    public static RecordVisit renewed(String visit, int day, @Nullable String bag, Onward mesh, Portion... putUp) {
        Replacement replacement = new Replacement(List.of(putUp), mesh, bag == null ? null : new BagId(bag));
        return new RecordVisit(BAND, visit, NOTHING_CAUGHT, replacement, JUDGING, DOER, onDay(day));
    }

    public static RecordTeardown tornDown(String teardown, int day, String bag, Onward mesh, Onward fasteners) {
        Teardown how = new Teardown(mesh, fasteners, new BagId(bag));
        return new RecordTeardown(BAND, teardown, how, JUDGING, DOER, onDay(day));
    }

    public static Look caught(LifeStage stage, long count, int saturationPercent) {
        return new Look(Answer.READ, saturationPercent, Map.of(stage, count), null, null);
    }

    /** All events of these commands, told one after the other. */
    public static List<BandEvent> told(BandCommand... commands) {
        Band band = Band.UNKNOWN;
        List<BandEvent> all = new ArrayList<>();
        for (BandCommand command : commands) {
            for (BandEvent event : band.decide(command)) {
                all.add(event);
                band = band.evolve(event);
            }
        }
        return all;
    }

    /** The band after these commands. */
    public static Band after(BandCommand... commands) {
        return told(commands).stream().reduce(Band.UNKNOWN, Band::evolve, (one, other) -> other);
    }

    /** The moves of these events, in order. */
    public static List<Move> moves(List<BandEvent> events) {
        return events.stream()
                .flatMap(event -> switch (event) {
                    case BandEvent.PiecesReplaced e -> e.moves().stream();
                    case BandEvent.TakenDown e -> e.moves().stream();
                    case BandEvent.PlacesSettled e -> e.moves().stream();
                    default -> List.<Move>of().stream();
                })
                .toList();
    }
}
