package org.bandtrail.siteinstalls.bands;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.bands.BandCommand.FitBand;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteReplacement;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteTakenDown;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.policies.PolicySamples;

/** A fitting and books that agree; tests change one thing. */
final class BandSamples {
    static final BandId BAND = new BandId("B-0001");
    static final TreeId TREE = new TreeId("ALDER-17");
    static final SiteId ALDER = new SiteId("ALDER");
    static final PersonId PERSON = new PersonId("P-07");
    static final ReelId TAPE = new ReelId("R-0001");
    static final ReelId MESH = new ReelId("R-0101");
    static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    static final DeviceKind STICKY =
            new DeviceKinds().named(DeviceKinds.STICKY_BAND).orElseThrow();

    static final Fitting FITTING = new Fitting(
            BAND,
            TREE,
            ALDER,
            new CrewId("C-2"),
            PERSON,
            WrittenGirth.ofGirth("1234 mm"),
            Length.ofMm(1200),
            new Piece(TAPE, Length.ofMm(1325)),
            new Piece(MESH, Length.ofMm(1465)),
            new Fasteners(new BatchId("F-0001"), Pieces.of(9)));
    static final Books BOOKS = new Books(
            true,
            new Books.RegisteredTree(ALDER, Length.ofMm(1230)),
            List.of(),
            null,
            new KnownReel(TAPE, new MaterialCode("TAPE-100"), MaterialKind.TAPE, Length.ofMm(100), null),
            new KnownReel(MESH, new MaterialCode("MESH-300"), MaterialKind.MESH, Length.ofMm(300), Length.ofMm(13)),
            PolicySamples.VERSION_1,
            STICKY);

    private BandSamples() {}

    static FitBand fit(Fitting fitting, Books books, Instant happened) {
        return new FitBand(fitting.bandId(), fitting, books, PERSON, Occurred.at(happened));
    }

    static NoteReplacement replaceTape(String reel, Instant happened) {
        return new NoteReplacement(
                BAND,
                "V-" + reel,
                TREE,
                ALDER,
                new Piece(new ReelId(reel), Length.ofMm(1325)),
                null,
                null,
                PERSON,
                Occurred.at(happened));
    }

    static NoteTakenDown takeDown(Instant happened) {
        return new NoteTakenDown(BAND, "TD-1", TREE, ALDER, PERSON, Occurred.at(happened));
    }

    static Band after(BandCommand... commands) {
        Band band = Band.NONE;
        for (BandCommand command : commands) {
            for (BandEvent event : band.decide(command)) {
                band = band.evolve(event);
            }
        }
        return band;
    }
}
