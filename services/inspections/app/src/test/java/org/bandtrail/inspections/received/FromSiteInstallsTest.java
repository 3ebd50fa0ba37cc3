package org.bandtrail.inspections.received;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.bandtrail.eventexchange.ContractJson;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.UnreadableEvent;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.OnPostgres;
import org.bandtrail.inspections.bands.BandCommand;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.BandSamples;
import org.bandtrail.inspections.bands.Teardown;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.siteinstalls.contract.v1.MaterialMove;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;

@OnPostgres
class FromSiteInstallsTest {
    @Autowired
    FromSiteInstalls door;

    @Autowired
    Work work;

    @Autowired
    JdbcClient jdbc;

    static List<GoldenFile> samples() {
        return GoldenFiles.in("samples").files().stream()
                .filter(file -> file.storedName().startsWith(BandFitted.TYPE))
                .toList();
    }

    private static Envelope envelope(String id, String json) {
        return new Envelope(
                id,
                "/bandtrail/site-installs",
                BandFitted.TYPE,
                "band/B-1",
                Instant.parse("2026-05-04T09:15:00Z"),
                JsonMapper.builder().build().readTree(json));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_becomes_the_same_pieces_on_the_same_tree(GoldenFile sample) {
        BandFitted told = ContractJson.read(sample.text(), BandFitted.class);

        HearOfFitting heard = door.fitting("EVENT-1", told);

        assertThat(heard.band().value()).isEqualTo(told.bandId());
        assertThat(heard.trunk().site().value()).isEqualTo(told.siteId());
        assertThat(heard.occurred().happened()).isEqualTo(told.happenedAt());
        assertThat(heard.putUp().stream()
                        .map(piece -> told(new Move(
                                piece,
                                Places.crew(heard.doer().person()),
                                Places.tree(heard.trunk().tree()))))
                        .toList())
                .containsExactlyInAnyOrderElementsOf(
                        told.moves().stream().map(FromSiteInstallsTest::silent).toList());
    }

    /** The same move without what it says of using the piece again. */
    private static MaterialMove silent(MaterialMove move) {
        return new MaterialMove(move.material(), move.id(), move.quantity(), move.source(), move.target());
    }

    @Test
    void the_skirt_of_a_funnel_trap_may_be_kept_at_teardown_and_sticky_tape_goes_into_the_bag_all_the_same() {
        assertThat(takenDown("site-installs.band-fitted.v1.4.json"))
                .contains("MESH R-0102 1100 to crew:P-07")
                .allMatch(move -> move.endsWith(" to crew:P-07"));
        assertThat(takenDown("site-installs.band-fitted.v1.3.json"))
                .as("its publisher did not say that it may be used again")
                .contains("TAPE R-0102 1100 to bag:BAG-1");
        assertThat(takenDown("site-installs.band-fitted.v1.1.json")).contains("TAPE R-0001 1325 to bag:BAG-1");
    }

    /** Where everything goes if all that can be used again is kept. */
    private List<String> takenDown(String sample) {
        BandFitted told = ContractJson.read(
                GoldenFiles.in("samples").named(sample).orElseThrow().text(), BandFitted.class);
        HearOfFitting heard = door.fitting("EVENT-1", told);
        Instant later = told.happenedAt().plusSeconds(3600);
        var teardown = new BandCommand.RecordTeardown(
                heard.band(),
                "TD-1",
                new Teardown(Onward.REUSE, Onward.REUSE, new BagId("BAG-1")),
                BandSamples.JUDGING,
                heard.doer(),
                new Occurred(later, later));
        return BandSamples.moves(BandSamples.told(heard, teardown)).stream()
                .map(move -> "%s %s %d to %s"
                        .formatted(
                                move.portion().kind(),
                                move.portion().id(),
                                move.portion().quantity(),
                                move.target()))
                .toList();
    }

    private static MaterialMove told(Move move) {
        Portion piece = move.portion();
        String material = piece.kind().onReels() ? MaterialMove.REEL : MaterialMove.BATCH;
        return new MaterialMove(material, piece.id(), piece.quantity(), move.source(), move.target());
    }

    @Test
    void a_fitting_heard_is_kept_and_a_field_we_do_not_know_is_ignored() {
        String json = samples().getFirst().text().replaceFirst("\\{", "{\"colour\":\"green\",");

        work.inOneTransaction(() -> {
            door.handle(envelope("EVENT-KEPT", json));
            return true;
        });

        assertThat(jdbc.sql("SELECT count(*) FROM domain_event_entry WHERE payload_type = 'band.fitting-heard'"
                                + " AND convert_from(payload, 'UTF8') LIKE '%EVENT-KEPT%'")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void a_fitting_that_cannot_be_read_stops_the_feed_instead_of_being_dropped() {
        assertThatThrownBy(() -> door.handle(envelope("EVENT-2", "{\"bandId\":\"B-1\",\"girthMm\":\"wide\"}")))
                .isInstanceOf(UnreadableEvent.class);
    }

    @Test
    void only_fittings_are_heard() {
        assertThat(door.handles(BandFitted.TYPE)).isTrue();
        assertThat(door.handles("site-installs.band-fitted.v2")).isFalse();
    }
}
