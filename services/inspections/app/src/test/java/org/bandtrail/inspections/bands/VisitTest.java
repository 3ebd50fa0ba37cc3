package org.bandtrail.inspections.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bandtrail.inspections.bands.BandSamples.BAND;
import static org.bandtrail.inspections.bands.BandSamples.DOER;
import static org.bandtrail.inspections.bands.BandSamples.JUDGING;
import static org.bandtrail.inspections.bands.BandSamples.NOTHING_CAUGHT;
import static org.bandtrail.inspections.bands.BandSamples.TRUNK;
import static org.bandtrail.inspections.bands.BandSamples.after;
import static org.bandtrail.inspections.bands.BandSamples.caught;
import static org.bandtrail.inspections.bands.BandSamples.fitted;
import static org.bandtrail.inspections.bands.BandSamples.onDay;
import static org.bandtrail.inspections.bands.BandSamples.tape;
import static org.bandtrail.inspections.bands.BandSamples.told;
import static org.bandtrail.inspections.bands.BandSamples.tornDown;
import static org.bandtrail.inspections.bands.BandSamples.visited;

import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.bands.BandCommand.RecordVisit;
import org.bandtrail.inspections.bands.BandEvent.Visited;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.LifeStage;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.Occurred;
import org.junit.jupiter.api.Test;

class VisitTest {

    private static Visited visit(BandCommand... commands) {
        return (Visited) told(commands).getLast();
    }

    @Test
    void a_visit_of_a_known_band_carries_its_tree_and_no_flag() {
        Visited visited = visit(fitted(1, tape("R-1", 1200)), visited("V-1", 3, NOTHING_CAUGHT));

        assertThat(visited.trunk()).isEqualTo(TRUNK);
        assertThat(visited.flags()).isEmpty();
        assertThat(visited.lowerBound()).isFalse();
    }

    @Test
    void a_visit_of_an_unknown_band_is_kept_and_flagged() {
        Visited visited = visit(visited("V-1", 3, NOTHING_CAUGHT));

        assertThat(visited.trunk()).isNull();
        assertThat(visited.flags()).containsExactly(BandFlag.BAND_NOT_KNOWN_YET);
    }

    @Test
    void a_catch_on_a_band_as_full_as_the_policy_says_is_a_lower_bound_and_one_percent_less_is_not() {
        assertThat(visit(fitted(1), visited("V-1", 3, caught(LifeStage.ADULT, 61, 90)))
                        .lowerBound())
                .isTrue();
        assertThat(visit(fitted(1), visited("V-1", 3, caught(LifeStage.ADULT, 61, 89)))
                        .lowerBound())
                .isFalse();
    }

    @Test
    void insects_counted_on_a_band_that_was_not_read_are_kept_and_flagged() {
        Look look = new Look(Answer.NOT_READ, 95, Map.of(LifeStage.INSTAR_1, 3L), null, null);

        Visited visited = visit(fitted(1), visited("V-1", 3, look));

        assertThat(visited.look()).isEqualTo(look);
        assertThat(visited.flags()).containsExactly(BandFlag.CATCH_WITHOUT_READING);
        assertThat(visited.lowerBound()).isFalse();
    }

    @Test
    void a_visit_after_the_teardown_is_kept_and_flagged() {
        Visited visited = visit(
                fitted(1), tornDown("TD-1", 5, "BAG-1", Onward.BAG, Onward.BAG), visited("V-1", 6, NOTHING_CAUGHT));

        assertThat(visited.flags()).containsExactly(BandFlag.BAND_ALREADY_DOWN);
    }

    @Test
    void a_visit_told_after_a_later_fact_is_flagged_as_out_of_order() {
        Visited visited = visit(
                fitted(1), tornDown("TD-1", 5, "BAG-1", Onward.BAG, Onward.BAG), visited("V-1", 4, NOTHING_CAUGHT));

        assertThat(visited.flags()).containsExactly(BandFlag.OUT_OF_ORDER);
    }

    @Test
    void a_record_is_late_from_the_hour_the_policy_names() {
        assertThat(recordedAfterSeconds(24 * 3600).flags()).containsExactly(BandFlag.RECORDED_LATE);
        assertThat(recordedAfterSeconds(24 * 3600 - 1).flags()).isEmpty();
    }

    @Test
    void a_clock_that_runs_ahead_is_flagged() {
        assertThat(recordedAfterSeconds(-1).flags()).containsExactly(BandFlag.CLOCK_AHEAD);
    }

    private static Visited recordedAfterSeconds(long seconds) {
        Occurred occurred =
                new Occurred(onDay(3).happened(), onDay(3).happened().plusSeconds(seconds));
        return visit(fitted(1), new RecordVisit(BAND, "V-1", NOTHING_CAUGHT, null, JUDGING, DOER, occurred));
    }

    @Test
    void the_same_visit_told_twice_is_known_once() {
        RecordVisit visit = visited("V-1", 3, NOTHING_CAUGHT);

        assertThat(after(fitted(1), visit).decide(visit)).isEqualTo(List.of());
    }

    @Test
    void another_visit_under_a_taken_identity_is_refused() {
        Band band = after(fitted(1), visited("V-1", 3, NOTHING_CAUGHT));

        assertThatThrownBy(() -> band.decide(visited("V-1", 4, NOTHING_CAUGHT)))
                .isInstanceOf(BandRefused.IdentityTaken.class)
                .hasMessageContaining("V-1");
    }
}
