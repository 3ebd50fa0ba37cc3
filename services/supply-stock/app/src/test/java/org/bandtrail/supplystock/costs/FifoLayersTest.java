package org.bandtrail.supplystock.costs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costs.FifoLayers.Draw;
import org.bandtrail.supplystock.costs.FifoLayers.Drawn;
import org.junit.jupiter.api.Test;

/**
 * The worked example of OpenStax, Principles of Accounting, volume 1, chapter 10 (data from memory, arithmetic
 * recomputed independently): opening 150 at 21, 120 sold, 225 bought at 27, 180 sold, 210 bought at 33. Whole dollars
 * in the book, cents here.
 */
class FifoLayersTest {
    private static final FifoLayers OPENING = FifoLayers.EMPTY.receive("opening", 150, dollars(150 * 21));

    @Test
    void first_in_first_out_costs_7200_and_leaves_8955() {
        Drawn first = OPENING.draw(120);
        Drawn second = first.left().receive("second", 225, dollars(225 * 27)).draw(180);
        FifoLayers end = second.left().receive("third", 210, dollars(210 * 33));

        assertThat(costOf(first).plus(costOf(second))).isEqualTo(dollars(7_200));
        assertThat(end.valueLeft("USD")).isEqualTo(dollars(8_955));
        assertThat(end.quantityLeft()).isEqualTo(285);
        assertThat(second.draws())
                .containsExactly(new Draw("opening", 30, dollars(630)), new Draw("second", 150, dollars(4_050)));
    }

    @Test
    void specific_identification_costs_7260_and_leaves_8895() {
        Drawn first = OPENING.drawFrom("opening", 120);
        Drawn second = first.left().receive("second", 225, dollars(225 * 27)).drawFrom("opening", 20);
        Drawn third = second.left().drawFrom("second", 160);
        FifoLayers end = third.left().receive("third", 210, dollars(210 * 33));

        assertThat(costOf(first).plus(costOf(second)).plus(costOf(third))).isEqualTo(dollars(7_260));
        assertThat(end.valueLeft("USD")).isEqualTo(dollars(8_895));
    }

    @Test
    void value_received_is_value_drawn_and_value_left_whatever_is_drawn() {
        SplittableRandom random = new SplittableRandom(20_260_403);
        for (int run = 0; run < 2_000; run++) {
            FifoLayers stock = FifoLayers.EMPTY;
            long received = 0;
            long drawn = 0;
            for (int step = 0; step < 12; step++) {
                if (stock.quantityLeft() == 0 || random.nextInt(3) == 0) {
                    long cost = random.nextLong(0, 10_000);
                    stock = stock.receive("L-" + step, random.nextLong(1, 500), Money.of(cost, "USD"));
                    received += cost;
                } else {
                    Drawn outcome = stock.draw(random.nextLong(1, stock.quantityLeft() + 1));
                    drawn += costOf(outcome).minor();
                    stock = outcome.left();
                }
                assertThat(stock.valueLeft("USD").minor() + drawn)
                        .as("run %d step %d", run, step)
                        .isEqualTo(received);
            }
        }
    }

    @Test
    void exactly_what_is_left_can_be_drawn_and_one_more_is_refused() {
        assertThat(OPENING.draw(150).left().quantityLeft()).isZero();
        assertThatThrownBy(() -> OPENING.draw(151)).hasMessage("Quantity [151] cannot be drawn. Give 1 to 150.");
        assertThatThrownBy(() -> OPENING.draw(0)).hasMessageContaining("[0]");
        assertThatThrownBy(() -> OPENING.drawFrom("opening", 151)).hasMessageContaining("[151]");
    }

    @Test
    void unknown_repeated_and_impossible_layers_are_refused_by_name() {
        assertThatThrownBy(() -> OPENING.drawFrom("third", 1)).hasMessageContaining("[third]");
        assertThatThrownBy(() -> OPENING.receive("opening", 1, dollars(1))).hasMessageContaining("opening");
        assertThatThrownBy(() -> OPENING.receive("empty", 0, dollars(1))).hasMessageContaining("[0]");
        assertThatThrownBy(() -> OPENING.receive("paid", 1, dollars(-1))).hasMessageContaining("[USD -1.00]");
    }

    private static Money costOf(Drawn drawn) {
        return drawn.draws().stream().map(Draw::cost).reduce(Money.zero("USD"), Money::plus);
    }

    private static Money dollars(long whole) {
        return Money.of(whole * 100, "USD");
    }
}
