package org.bandtrail.supplystock.causes;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;

/**
 * A true day: one person takes two reels of tape and one of mesh, bands eight to fourteen trees, and brings everything back
 * measured within the hour. Nothing in it is in doubt; a mistake is what is told of it.
 *
 * @param bands in the order of the day
 */
record FieldDay(List<Band> bands, Instant back) {
    static final PersonId WREN = new PersonId("P-07");
    static final DepotId NORTH = new DepotId("NORTH");
    static final ReelId TAPE = new ReelId("R-0012");
    static final ReelId SECOND_TAPE = new ReelId("R-0013");
    static final ReelId MESH = new ReelId("M-0400");
    private static final long FULL = 100_000;
    private static final Instant MORNING = Instant.parse("2026-05-04T07:00:00Z");

    /** One band: a length of tape and one of mesh, in millimetres. */
    record Band(String name, Place tree, ReelId tapeReel, long tape, long mesh, Instant at) {}

    static FieldDay any(RandomGenerator random) {
        List<Band> bands = new ArrayList<>();
        Instant at = MORNING;
        int trees = 8 + random.nextInt(7);
        for (int i = 0; i < trees; i++) {
            at = at.plus(Duration.ofMinutes(15 + random.nextInt(20)));
            bands.add(new Band(
                    "band B-" + i,
                    Place.tree(new TreeId("T-" + i)),
                    random.nextInt(4) == 0 ? SECOND_TAPE : TAPE,
                    900 + random.nextInt(1_700),
                    1_100 + random.nextInt(1_900),
                    at));
        }
        return new FieldDay(bands, at.plus(Duration.ofMinutes(10 + random.nextInt(50))));
    }

    /** What the depot does in the morning. */
    List<ReelCommand> handout() {
        List<ReelCommand> commands = new ArrayList<>(received());
        commands.add(out(TAPE));
        commands.add(out(SECOND_TAPE));
        commands.add(out(MESH));
        return commands;
    }

    List<ReelCommand> received() {
        return List.of(
                receive(TAPE, MaterialKind.TAPE),
                receive(SECOND_TAPE, MaterialKind.TAPE),
                receive(MESH, MaterialKind.MESH));
    }

    static ReelCommand receive(ReelId reel, MaterialKind kind) {
        return new ReelCommand.Receive(
                reel,
                new MaterialCode(kind.name() + "-A"),
                kind,
                Length.ofMm(FULL),
                Money.of(3_800, "USD"),
                Place.depot(NORTH),
                WREN,
                Occurred.at(MORNING.minus(Duration.ofDays(3))));
    }

    static ReelCommand out(ReelId reel) {
        return new ReelCommand.HandOut(reel, new KitId("K-1"), NORTH, WREN, WREN, Occurred.at(MORNING));
    }

    /** A piece told as it was, or told of another reel, length or time. */
    static ReelCommand piece(Band band, ReelId reel, long mm, Instant happened, Instant recorded) {
        return new ReelCommand.RecordFact(
                reel,
                band.name(),
                Place.crew(WREN),
                band.tree(),
                Length.ofMm(mm),
                new SiteId("S-1"),
                WREN,
                new Occurred(happened, recorded));
    }

    static ReelCommand tape(Band band) {
        return piece(band, band.tapeReel(), band.tape(), band.at(), band.at());
    }

    static ReelCommand mesh(Band band) {
        return piece(band, MESH, band.mesh(), band.at(), band.at());
    }

    /** What was measured in the evening: what is really left. */
    List<ReelCommand> measuredReturn() {
        return List.of(measured(TAPE), measured(SECOND_TAPE), measured(MESH));
    }

    private ReelCommand measured(ReelId reel) {
        long used = bands.stream()
                .mapToLong(band -> reel.equals(MESH) ? band.mesh() : reel.equals(band.tapeReel()) ? band.tape() : 0)
                .sum();
        return new ReelCommand.Return(reel, WREN, NORTH, Length.ofMm(FULL - used), WREN, Occurred.at(back));
    }
}
