package org.bandtrail.supplystock.custody;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.custody.Told.ANNA;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SettlingTest {
    private static final PersonId BORIS = new PersonId("P-08");

    @Test
    void handed_out_is_fitted_returned_scrapped_and_missing_when_the_rest_is_measured() {
        Told told = new Told(50_000)
                .handOut("K-1", 1)
                .fit(ANNA, 30_000, 2)
                .scrap(ANNA, 2_000, 3)
                .bringBack(ANNA, 17_500, 9);

        assertThat(told.kit("K-1")).isEqualTo(new Settlement(50_000, 30_000, 17_500, 2_000, 500, 0, 0, 0));
        assertThat(turns(told)).containsExactly("settled returned");
    }

    @Test
    void while_something_is_out_the_kit_is_not_settled() {
        Told told = new Told(50_000).handOut("K-1", 1).fit(ANNA, 30_000, 2);

        assertThat(told.kit("K-1").stillOut()).isEqualTo(20_000);
        assertThat(turns(told)).isEmpty();
    }

    @Test
    void a_fact_told_late_explains_what_was_missing_and_reopens_the_kit_it_belongs_to() {
        Told told = new Told(50_000)
                .handOut("K-1", 1)
                .bringBack(ANNA, 45_000, 9)
                .handOut("K-2", 24)
                .fit(ANNA, 5_000, 3);

        assertThat(told.kit("K-1")).isEqualTo(new Settlement(50_000, 5_000, 45_000, 0, 0, 0, 0, 0));
        assertThat(told.kit("K-2").stillOut())
                .as("the next day's kit is untouched")
                .isEqualTo(45_000);
        assertThat(turns(told)).containsExactly("settled returned", "reopened fitted", "settled fitted");
    }

    @Test
    void the_later_kit_is_measured_against_its_own_handout() {
        Told told = new Told(50_000)
                .handOut("K-1", 1)
                .bringBack(ANNA, 45_000, 9)
                .handOut("K-2", 24)
                .fit(ANNA, 5_000, 3)
                .bringBack(ANNA, 45_000, 30);

        assertThat(told.kit("K-2")).isEqualTo(new Settlement(45_000, 0, 45_000, 0, 0, 0, 0, 0));
    }

    @Test
    void what_was_missing_and_is_written_off_stays_told_apart() {
        Told told =
                new Told(50_000).handOut("K-1", 1).bringBack(ANNA, 49_000, 9).settle(ANNA);

        assertThat(told.kit("K-1")).isEqualTo(new Settlement(50_000, 0, 49_000, 0, 0, 1_000, 0, 0));
    }

    @Test
    void what_goes_on_to_another_person_is_out_with_that_person_and_not_with_this_kit() {
        Told told = new Told(50_000)
                .handOut("K-1", 1)
                .fact(Place.crew(ANNA), Place.crew(BORIS), 10_000, 2)
                .bringBack(ANNA, 40_000, 9);

        assertThat(told.kit("K-1")).isEqualTo(new Settlement(50_000, 0, 40_000, 0, 0, 0, 10_000, 0));
        assertThat(told.steps())
                .anyMatch(step -> step.held().person().equals(BORIS.value()) && step.target() == Station.WITH_PERSON);
    }

    @Test
    void mesh_that_came_off_a_tree_into_use_is_no_longer_fitted() {
        Told told = new Told(50_000)
                .handOut("K-1", 1)
                .fit(ANNA, 3_000, 2)
                .fact(Place.tree(new TreeId("T-1")), Place.crew(ANNA), 1_000, 4);

        assertThat(told.kit("K-1")).isEqualTo(new Settlement(50_000, 2_000, 0, 0, 0, 0, 0, 48_000));
    }

    @Test
    void fasteners_of_two_kits_in_one_pocket_are_used_and_counted_from_the_oldest_kit_first() {
        Settling settling = Settling.of(List.of(
                pins(1, Station.HANDED_OUT, Station.WITH_PERSON, 100, "K-1", false),
                pins(2, Station.HANDED_OUT, Station.WITH_PERSON, 100, "K-2", false),
                pins(3, Station.WITH_PERSON, Station.FITTED, 130, null, false),
                pins(4, Station.WITH_PERSON, Station.RETURNED, 60, null, true),
                pins(5, Station.WITH_PERSON, Station.MISSING, 10, null, true)));

        assertThat(settling.lines("K-1").values()).containsExactly(new Settlement(100, 100, 0, 0, 0, 0, 0, 0));
        assertThat(settling.lines("K-2").values()).containsExactly(new Settlement(100, 30, 60, 0, 10, 0, 0, 0));
    }

    private static CustodyStep pins(
            int hour, Station from, Station to, long pieces, @Nullable String kit, boolean measured) {
        Instant then = Instant.EPOCH.plusSeconds(3_600L * hour);
        CustodyStep.Held held = new CustodyStep.Held("batch", "B-1", "P-07");
        return new CustodyStep(
                Math.min(hour, 4), hour, held, from, to, pieces, "depot:NORTH", "", kit, measured, then, then);
    }

    private static List<String> turns(Told told) {
        return told.settling().story("K-1").stream()
                .map(turn -> (turn.settled() ? "settled " : "reopened ") + turn.what())
                .toList();
    }
}
