package org.bandtrail.siteinstalls.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.bands.BandCommand;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteReplacement;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteTakenDown;
import org.bandtrail.siteinstalls.bands.Fasteners;
import org.bandtrail.siteinstalls.bands.Piece;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;

@OnPostgres
class FromInspectionsTest {
    private final FromInspections from;

    @Autowired
    FromInspectionsTest(Commands commands, MeshPieceFacts pieces) {
        this.from = new FromInspections(commands, pieces);
    }

    /** The samples of the jar that are published by inspections. */
    static List<GoldenFile> samples() {
        return GoldenFiles.in("samples").files().stream()
                .filter(file -> file.storedName().startsWith("inspections."))
                .toList();
    }

    static Envelope envelope(GoldenFile sample) {
        return new Envelope(
                "E-" + sample.fileName(),
                "/bandtrail/inspections",
                sample.storedName(),
                "band/B-0002",
                Instant.parse("2026-10-20T09:00:00Z"),
                sample.json());
    }

    private static Optional<BandCommand> command(String fileName) {
        GoldenFile sample = GoldenFiles.in("samples").named(fileName).orElseThrow();
        return FromInspections.command(envelope(sample));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_is_translated_or_passed_over_by_name(GoldenFile sample) {
        boolean ours = List.of("inspections.pieces-replaced.v1", "inspections.band-taken-down.v1")
                .contains(sample.storedName());
        assertThat(from.handles(sample.storedName())).isEqualTo(ours);
        if (ours) {
            boolean settles = sample.json().path("settlesEarlier").asBoolean();
            assertThat(FromInspections.command(envelope(sample)).isPresent()).isEqualTo(!settles);
        }
    }

    @Test
    void replaced_pieces_are_noted_with_what_is_new() {
        assertThat(command("inspections.pieces-replaced.v1.1.json"))
                .contains(new NoteReplacement(
                        new BandId("B-0002"),
                        "V-0003",
                        new TreeId("T-0002"),
                        new SiteId("S-MILL"),
                        new Piece(new ReelId("R-0008"), Length.ofMm(1210)),
                        new Piece(new ReelId("M-0003"), Length.ofMm(1400)),
                        new Fasteners(new BatchId("F-0001"), Pieces.of(6)),
                        new PersonId("P-07"),
                        new Occurred(Instant.parse("2026-09-12T10:00:00Z"), Instant.parse("2026-09-12T10:00:05Z"))));
    }

    @Test
    void a_teardown_is_noted() {
        assertThat(command("inspections.band-taken-down.v1.1.json"))
                .contains(new NoteTakenDown(
                        new BandId("B-0002"),
                        "TD-0001",
                        new TreeId("T-0002"),
                        new SiteId("S-MILL"),
                        new PersonId("P-07"),
                        new Occurred(Instant.parse("2026-10-20T09:00:00Z"), Instant.parse("2026-10-20T15:00:00Z"))));
    }
}
