package org.bandtrail.supplystock.counts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.counts.CountSamples.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;

/** A misplaced reel is moved, not written off and found again. */
class PostingsTest {
    @Test
    void a_reel_in_the_wrong_bin_is_moved_and_only_the_rest_is_adjusted() {
        SheetLine expected = reel("R-1", OTHER_BIN, 50_000);
        SheetLine found = reel("R-1", BIN, 0);

        assertThat(postedOf(NORTH, Map.of(expected, 0L, found, 49_600L)))
                .containsExactlyInAnyOrder(
                        "PUT_IN_BIN R-1 depot:NORTH/B-01->depot:NORTH/A-03 49600",
                        "ADJUSTED R-1 null->depot:NORTH/B-01 -400");
    }

    @Test
    void what_the_books_have_in_a_bin_that_is_not_counted_comes_from_there() {
        SheetLine found = reel("R-1", BIN, 0, OTHER_BIN, 50_000);

        assertThat(postedOf(BIN, Map.of(found, 50_200L)))
                .containsExactly(
                        "PUT_IN_BIN R-1 depot:NORTH/B-01->depot:NORTH/A-03 50000",
                        "ADJUSTED R-1 null->depot:NORTH/A-03 200");
    }

    @Test
    void what_the_books_have_with_a_person_was_brought_back() {
        SheetLine found = reel("R-1", BIN, 0, Place.parse("crew:P-07"), 12_000);

        assertThat(postedOf(BIN, Map.of(found, 11_800L)))
                .containsExactly("BROUGHT_BACK R-1 crew:P-07->depot:NORTH/A-03 11800");
    }

    @Test
    void what_the_books_have_on_a_vehicle_or_do_not_know_has_to_be_entered_first() {
        SheetLine onTruck = reel("R-1", BIN, 0, Place.parse("vehicle:V-1"), 12_000);
        SheetLine unknown = new SheetLine("reel", "R-2", BIN, null, null, 0, 0, 0, null, null, 0);

        assertThatExceptionOfType(CountRefused.FoundButNotHere.class)
                .isThrownBy(() -> postedOf(BIN, Map.of(onTruck, 12_000L)))
                .withMessageContaining("vehicle:V-1");
        assertThatExceptionOfType(CountRefused.FoundButNotHere.class)
                .isThrownBy(() -> postedOf(BIN, Map.of(unknown, 12_000L)))
                .withMessageContaining("not received");
    }

    @Test
    void one_batch_in_two_bins_keeps_its_own_difference_in_each() {
        SheetLine here = pins("B-1", BIN, 100);
        SheetLine there = pins("B-1", OTHER_BIN, 300);

        assertThat(postedOf(NORTH, Map.of(here, 90L, there, 290L)))
                .containsExactlyInAnyOrder(
                        "ADJUSTED B-1 null->depot:NORTH/A-03 -10", "ADJUSTED B-1 null->depot:NORTH/B-01 -10");
    }

    /** Counted twice with the same figures, explained, approved by somebody else. */
    private static List<String> postedOf(Place scope, Map<SheetLine, Long> figures) {
        List<CountCommand> commands = new ArrayList<>();
        commands.add(open(
                scope,
                figures.keySet().stream().filter(line -> line.book() != 0).toArray(SheetLine[]::new)));
        figures.forEach((line, figure) -> commands.add(enter(line, line.place(), figure, false, WREN)));
        commands.add(finish(false));
        Count count = after(commands.toArray(CountCommand[]::new));
        for (SheetLine.Key key : List.copyOf(count.again())) {
            SheetLine line = Objects.requireNonNull(count.lines().get(key)).sheet();
            count = next(count, enter(line, line.place(), Objects.requireNonNull(figures.get(line)), false, FINN));
        }
        if (count.stage() == Count.Stage.COUNTING) {
            count = next(count, finish(false));
        }
        for (SheetLine line : figures.keySet()) {
            count = next(count, because(line, "looked"));
        }
        List<String> posted = new ArrayList<>(posted(count, LEAD));
        return posted;
    }
}
