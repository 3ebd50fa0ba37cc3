package org.bandtrail.supplystock.slittings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** One wide reel in, strips and a trim out. */
class SlittingTest {
    private static final SlittingId ID = new SlittingId("S-1");

    @Test
    void strips_and_trim_are_as_wide_as_the_reel() {
        SlittingEvent.Slit slit = (SlittingEvent.Slit)
                Slitting.UNKNOWN.decide(wish(381, 0, 127, 127, 127)).getFirst();

        assertThat(slit.strips()).hasSize(3);
        assertThat(Slitting.UNKNOWN.decide(wish(392, 11, 127, 127, 127))).hasSize(1);
    }

    @Test
    void widths_that_do_not_add_up_are_refused_with_the_sum() {
        assertThatExceptionOfType(SlittingRefused.WidthsDoNotAddUp.class)
                .isThrownBy(() -> Slitting.UNKNOWN.decide(wish(400, 0, 127, 127, 127)))
                .withMessage("Slitting [S-1]: strips of 381 mm and a trim of 0 mm make 381 mm, the reel is 400 mm wide."
                        + " Measure the trim, or take other items.");
    }

    @Test
    void each_strip_has_a_label_of_its_own() {
        var twice = new SlittingCommand.Slit(
                ID,
                new ReelId("W-1"),
                new MaterialCode("WIDE"),
                Length.ofMm(1_000),
                Length.ofMm(200),
                List.of(strip("W-1-A", 100), strip("W-1-A", 100)),
                Length.ofMm(0),
                new PersonId("P-1"),
                Occurred.at(Instant.EPOCH));
        assertThatExceptionOfType(SlittingRefused.LabelTwice.class).isThrownBy(() -> Slitting.UNKNOWN.decide(twice));
    }

    @Test
    void the_cost_is_split_by_width_and_adds_up_to_the_cent() {
        // 100.00 over three equal strips: 33.34, 33.33, 33.33, as freight is split in the E3 example of this project's
        // check values.
        assertThat(Slitting.costs(100_00, List.of(strip("A", 127), strip("B", 127), strip("C", 127))))
                .containsExactly(33_34L, 33_33L, 33_33L);
        // By hand: 90.00 over 40, 40 and 100 mm is 20, 20 and 50.
        assertThat(Slitting.costs(90_00, List.of(strip("A", 40), strip("B", 40), strip("C", 100))))
                .containsExactly(20_00L, 20_00L, 50_00L);
    }

    @Test
    void whatever_is_slit_area_and_cost_balance() {
        long splits = Histories.check(
                500, 20_261_125, 8, random -> new long[] {1 + random.nextInt(300), random.nextInt(90_000)}, history -> {
                    List<Strip> strips = IntStream.range(0, history.size())
                            .mapToObj(i -> strip("R-" + i, history.get(i)[0]))
                            .toList();
                    long cost = history.getFirst()[1];
                    long widths = history.stream().mapToLong(each -> each[0]).sum();

                    List<Long> costs = Slitting.costs(cost, strips);
                    assertThat(costs.stream().mapToLong(Long::longValue).sum()).isEqualTo(cost);
                    assertThat(Slitting.UNKNOWN.decide(wish(widths + 7, 7, widthsOf(strips))))
                            .hasSize(1);
                });
        assertThat(splits).isGreaterThan(500);
    }

    private static long[] widthsOf(List<Strip> strips) {
        return strips.stream().mapToLong(strip -> strip.width().mm()).toArray();
    }

    private static Strip strip(String label, long width) {
        return new Strip(new ReelId(label), new MaterialCode("NARROW"), Length.ofMm(width));
    }

    private static SlittingCommand wish(long width, long trim, long... strips) {
        return new SlittingCommand.Slit(
                ID,
                new ReelId("W-1"),
                new MaterialCode("WIDE"),
                Length.ofMm(50_000),
                Length.ofMm(width),
                IntStream.range(0, strips.length)
                        .mapToObj(i -> strip("W-1-" + i, strips[i]))
                        .toList(),
                Length.ofMm(trim),
                new PersonId("P-1"),
                Occurred.at(Instant.EPOCH));
    }
}
