package org.bandtrail.inspections.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.inspections.bands.BandSamples.caught;
import static org.bandtrail.inspections.bands.BandSamples.fitted;
import static org.bandtrail.inspections.bands.BandSamples.mesh;
import static org.bandtrail.inspections.bands.BandSamples.pins;
import static org.bandtrail.inspections.bands.BandSamples.renewed;
import static org.bandtrail.inspections.bands.BandSamples.tape;
import static org.bandtrail.inspections.bands.BandSamples.told;
import static org.bandtrail.inspections.bands.BandSamples.tornDown;
import static org.bandtrail.inspections.bands.BandSamples.visited;

import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.bands.BandCommand;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.BandVisited;
import org.bandtrail.inspections.contract.v1.MaterialMove;
import org.bandtrail.inspections.contract.v1.PiecesReplaced;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.sightings.LifeStage;
import org.junit.jupiter.api.Test;

class PublishedBandsTest {
    private static final BandCommand FITTED = fitted(1, tape("R-1", 1200), mesh("M-1", 1400), pins("F-1", 6));

    private static List<Object> published(BandCommand... commands) {
        return told(commands).stream()
                .flatMap(event -> PublishedBands.of(event).stream())
                .toList();
    }

    @Test
    void a_fitting_is_for_its_own_service_to_tell() {
        assertThat(published(FITTED)).isEmpty();
    }

    @Test
    void a_visit_tells_answer_catch_and_where() {
        BandVisited visited = (BandVisited) published(FITTED, visited("V-1", 3, caught(LifeStage.INSTAR_2, 14, 95)))
                .getLast();

        assertThat(visited.answer()).isEqualTo("read");
        assertThat(visited.catches()).isEqualTo(Map.of("instar-2", 14L));
        assertThat(visited.catchIsLowerBound()).isTrue();
        assertThat(visited.treeId()).isEqualTo("T-1");
        assertThat(visited.siteId()).isEqualTo("S-1");
        assertThat(visited.subject()).isEqualTo("band/B-1");
    }

    @Test
    void a_renewal_tells_the_new_pieces_and_all_moves() {
        PiecesReplaced replaced = (PiecesReplaced)
                published(FITTED, renewed("V-1", 4, "BAG-1", Onward.REUSE, tape("R-2", 1210), mesh("M-2", 1390)))
                        .getLast();

        assertThat(replaced.newTapeReelId()).isEqualTo("R-2");
        assertThat(replaced.newTapeLengthMm()).isEqualTo(1210);
        assertThat(replaced.newMeshLengthMm()).isEqualTo(1390);
        assertThat(replaced.fastenerPieces()).isZero();
        assertThat(replaced.settlesEarlier()).isFalse();
        assertThat(replaced.moves())
                .containsExactlyInAnyOrder(
                        new MaterialMove("reel", "R-1", 1200, "tree:T-1", "bag:BAG-1"),
                        new MaterialMove("reel", "M-1", 1400, "tree:T-1", "crew:P-07"),
                        new MaterialMove("reel", "R-2", 1210, "crew:P-07", "tree:T-1"),
                        new MaterialMove("reel", "M-2", 1390, "crew:P-07", "tree:T-1"));
    }

    @Test
    void moves_known_late_are_told_under_the_same_visit_and_renew_nothing_again() {
        PiecesReplaced late =
                (PiecesReplaced) published(renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)), FITTED)
                        .getLast();

        assertThat(late.visitId()).isEqualTo("V-1");
        assertThat(late.settlesEarlier()).isTrue();
        assertThat(late.newTapeReelId()).isNull();
        assertThat(late.moves()).hasSize(2);
        assertThat(late.siteId()).isEqualTo("S-1");
    }

    @Test
    void a_teardown_heard_before_its_fitting_is_completed_under_its_own_name() {
        List<Object> told = published(tornDown("TD-1", 9, "BAG-2", Onward.BAG, Onward.REUSE), FITTED);

        assertThat(((BandTakenDown) told.getFirst()).moves()).isEmpty();
        BandTakenDown late = (BandTakenDown) told.getLast();
        assertThat(late.teardownId()).isEqualTo("TD-1");
        assertThat(late.moves())
                .contains(
                        new MaterialMove("batch", "F-1", 6, "tree:T-1", "crew:P-07"),
                        new MaterialMove("reel", "R-1", 1200, "tree:T-1", "bag:BAG-2"));
    }

    @Test
    void pieces_of_one_reel_that_go_the_same_way_are_one_move() {
        Move piece = new Move(tape("R-1", 500), "bag:BAG-1", "disposed:L-1");

        assertThat(PublishedMoves.of(List.of(piece, piece)))
                .containsExactly(new MaterialMove("reel", "R-1", 1000, "bag:BAG-1", "disposed:L-1"));
    }
}
