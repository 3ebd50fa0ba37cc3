package org.bandtrail.supplystock.slittings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.random.RandomGenerator;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/**
 * A wide reel and everything that was slit from it, over random histories: slit in parts into strips of any widths, used
 * by crews before and after, moved into vehicles, and made dearer or cheaper by late invoices.
 */
class SlittingLawTest {
    private static final int HISTORIES = 4_000;

    @Test
    void length_area_and_cents_balance_between_a_wide_reel_and_its_strips() {
        long steps = Histories.check(
                HISTORIES,
                20_261_125,
                16,
                () -> SlitWorkshop.fresh(600, 50_000, 12_345),
                SlittingLawTest::anyStep,
                SlitWorkshop::after,
                SlittingLawTest::law);

        assertThat(steps).isGreaterThan(HISTORIES);
    }

    private static SlitWorkshop.Step anyStep(RandomGenerator random, SlitWorkshop workshop) {
        SlitWorkshop.Kind[] kinds = SlitWorkshop.Kind.values();
        return new SlitWorkshop.Step(
                kinds[random.nextInt(kinds.length)],
                1 + random.nextInt(20_000),
                1 + random.nextInt(6),
                random.nextInt(6_000) - 2_000,
                random.nextInt(4));
    }

    private static void law(SlitWorkshop workshop) {
        workshop.done().forEach((slitting, slit) -> {
            long strips = slit.strips().stream()
                    .mapToLong(strip -> strip.width().mm())
                    .sum();
            assertThat(slit.length().mm() * (strips + slit.trim().mm()))
                    .as("area out of %s = area in", slitting)
                    .isEqualTo(slit.length().mm() * slit.width().mm());
            assertThat(workshop.lengthLost(slitting))
                    .as("length the wide reel lost")
                    .isEqualTo(slit.length().mm());
            assertThat(workshop.lengthMade(slitting))
                    .as("length of each strip")
                    .hasSize(slit.strips().size())
                    .containsOnly(slit.length().mm());
            assertThat(workshop.stripsCost(slitting))
                    .as("cents on the strips of %s = cents the wide reel paid in", slitting)
                    .isEqualTo(workshop.paidIn(slitting));
        });
        assertThat(workshop.costInStock() + workshop.chargedToOthers())
                .as("cost anywhere = cost bought")
                .isEqualTo(workshop.costBought());
    }
}
