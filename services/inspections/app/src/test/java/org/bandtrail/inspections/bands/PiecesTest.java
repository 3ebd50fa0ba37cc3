package org.bandtrail.inspections.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.inspections.bands.BandSamples.after;
import static org.bandtrail.inspections.bands.BandSamples.fitted;
import static org.bandtrail.inspections.bands.BandSamples.mesh;
import static org.bandtrail.inspections.bands.BandSamples.moves;
import static org.bandtrail.inspections.bands.BandSamples.pins;
import static org.bandtrail.inspections.bands.BandSamples.renewed;
import static org.bandtrail.inspections.bands.BandSamples.tape;
import static org.bandtrail.inspections.bands.BandSamples.told;
import static org.bandtrail.inspections.bands.BandSamples.tornDown;

import java.util.List;
import org.bandtrail.inspections.bands.BandEvent.PiecesReplaced;
import org.bandtrail.inspections.bands.BandEvent.PlacesSettled;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Onward;
import org.junit.jupiter.api.Test;

class PiecesTest {
    private static final BandCommand FITTED = fitted(1, tape("R-1", 1200), mesh("M-1", 1400), pins("F-1", 6));

    @Test
    void renewed_tape_takes_the_old_piece_to_the_bag_and_the_new_one_from_the_person_to_the_tree() {
        List<BandEvent> events = told(FITTED, renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)));

        assertThat(moves(events))
                .containsExactlyInAnyOrder(
                        new Move(tape("R-1", 1200), "tree:T-1", "bag:BAG-1"),
                        new Move(tape("R-2", 1210), "crew:P-07", "tree:T-1"));
    }

    @Test
    void mesh_that_is_put_back_into_use_goes_to_the_person_and_tape_never_does() {
        List<BandEvent> events =
                told(FITTED, renewed("V-1", 4, "BAG-1", Onward.REUSE, tape("R-2", 1210), mesh("M-2", 1400)));

        assertThat(moves(events))
                .contains(
                        new Move(mesh("M-1", 1400), "tree:T-1", "crew:P-07"),
                        new Move(tape("R-1", 1200), "tree:T-1", "bag:BAG-1"));
    }

    @Test
    void a_teardown_takes_everything_that_hangs() {
        List<BandEvent> events = told(
                FITTED,
                renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)),
                tornDown("TD-1", 9, "BAG-2", Onward.REUSE, Onward.BAG));

        assertThat(moves(events.subList(3, events.size())))
                .containsExactlyInAnyOrder(
                        new Move(tape("R-2", 1210), "tree:T-1", "bag:BAG-2"),
                        new Move(mesh("M-1", 1400), "tree:T-1", "crew:P-07"),
                        new Move(pins("F-1", 6), "tree:T-1", "bag:BAG-2"));
    }

    @Test
    void waste_without_a_named_bag_waits_under_the_persons_name_and_is_flagged() {
        List<BandEvent> events = told(FITTED, renewed("V-1", 4, null, Onward.BAG, tape("R-2", 1210)));

        assertThat(moves(events)).contains(new Move(tape("R-1", 1200), "tree:T-1", "bag:LOOSE-P-07"));
        assertThat(((BandEvent.Visited) events.get(1)).flags()).containsExactly(BandFlag.BAG_NOT_NAMED);
    }

    @Test
    void while_the_fitting_is_not_known_a_replacement_is_kept_without_moves() {
        List<BandEvent> events = told(renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)));

        assertThat(events).hasSize(2);
        assertThat(((PiecesReplaced) events.get(1)).moves()).isEmpty();
    }

    @Test
    void when_the_fitting_is_heard_late_the_missing_moves_are_told_under_the_visit_they_belong_to() {
        List<BandEvent> events = told(renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)), FITTED);

        PlacesSettled settled = (PlacesSettled) events.getLast();
        assertThat(settled.fact()).isEqualTo("V-1");
        assertThat(settled.moves())
                .containsExactlyInAnyOrder(
                        new Move(tape("R-1", 1200), "tree:T-1", "bag:BAG-1"),
                        new Move(tape("R-2", 1210), "crew:P-07", "tree:T-1"));
    }

    @Test
    void a_renewal_told_after_a_later_one_moves_the_older_piece_over_to_the_right_bag() {
        List<BandEvent> events = told(
                FITTED,
                renewed("V-2", 8, "BAG-2", Onward.BAG, tape("R-3", 1205)),
                renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)));

        assertThat(moves(events.subList(3, events.size())))
                .containsExactlyInAnyOrder(
                        new Move(tape("R-1", 1200), "bag:BAG-2", "bag:BAG-1"),
                        new Move(tape("R-2", 1210), "crew:P-07", "tree:T-1"),
                        new Move(tape("R-2", 1210), "tree:T-1", "bag:BAG-2"));
    }

    @Test
    void a_fitting_whose_clock_ran_ahead_still_comes_before_everything_else() {
        BandCommand wrongClock = fitted(30, tape("R-1", 1200));

        List<BandEvent> events = told(wrongClock, renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)));

        assertThat(moves(events)).contains(new Move(tape("R-1", 1200), "tree:T-1", "bag:BAG-1"));
    }

    @Test
    void what_hangs_is_what_was_put_up_last_of_each_kind() {
        assertThat(after(FITTED, renewed("V-1", 4, "BAG-1", Onward.BAG, tape("R-2", 1210)))
                        .hanging())
                .containsExactlyInAnyOrder(tape("R-2", 1210), mesh("M-1", 1400), pins("F-1", 6));
    }
}
