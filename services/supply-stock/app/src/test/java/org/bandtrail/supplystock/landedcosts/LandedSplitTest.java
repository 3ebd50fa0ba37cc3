package org.bandtrail.supplystock.landedcosts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class LandedSplitTest {

    /** Freight of 100.00 over lines worth 300, 300 and 400: 30, 30 and 40. Computed by hand. */
    @Test
    void freight_by_value_follows_the_value_of_the_lines() {
        List<DeliveredLine> lines =
                List.of(line(1, 300_00, true, 5), line(2, 300_00, false, 7), line(3, 400_00, true, 9));

        assertThat(minor(LandedSplit.lines(usd(100_00), Basis.VALUE, lines))).containsExactly(30_00L, 30_00L, 40_00L);
    }

    /** 100.00 over three equal lines: 33.34, 33.33 and 33.33. Computed by hand. */
    @Test
    void the_cent_that_does_not_divide_goes_to_the_earlier_line() {
        List<DeliveredLine> lines = List.of(line(1, 1, true, 5), line(2, 1, true, 5), line(3, 1, true, 5));

        assertThat(minor(LandedSplit.lines(usd(100_00), Basis.COUNT, lines))).containsExactly(33_34L, 33_33L, 33_33L);
    }

    @Test
    void by_length_fasteners_bear_nothing() {
        List<DeliveredLine> lines = List.of(line(1, 1, true, 30), line(2, 900_00, false, 70), line(3, 1, true, 10));

        assertThat(minor(LandedSplit.lines(usd(8_00), Basis.LENGTH, lines))).containsExactly(6_00L, 0L, 2_00L);
        assertThat(LandedSplit.shares(usd(8_00), Basis.LENGTH, lines))
                .extracting(LandedShare::line)
                .containsExactly(1, 3);
    }

    @Test
    void shares_of_reels_add_up_to_their_line_and_lines_to_the_amount_whatever_comes() {
        SplittableRandom random = new SplittableRandom(20_260_521);
        for (int run = 0; run < 2_000; run++) {
            List<DeliveredLine> lines = new ArrayList<>();
            for (int line = 1; line <= 1 + random.nextInt(5); line++) {
                lines.add(line(
                        line,
                        random.nextLong(1, 100_000),
                        true,
                        LongStream.generate(() -> random.nextLong(1, 50_000))
                                .limit(1 + random.nextInt(6))
                                .toArray()));
            }
            Money amount = usd(random.nextLong(1, 1_000_000));
            for (Basis basis : Basis.values()) {
                List<LandedShare> shares = LandedSplit.shares(amount, basis, lines);
                assertThat(shares.stream()
                                .mapToLong(share -> share.amount().minor())
                                .sum())
                        .as("run %d by %s", run, basis)
                        .isEqualTo(amount.minor());
                List<Money> ofLines = LandedSplit.lines(amount, basis, lines);
                for (DeliveredLine line : lines) {
                    assertThat(shares.stream()
                                    .filter(share -> share.line() == line.line())
                                    .mapToLong(share -> share.amount().minor())
                                    .sum())
                            .isEqualTo(ofLines.get(line.line() - 1).minor());
                }
            }
        }
    }

    @Test
    void an_amount_is_spread_once_and_taken_back_once() {
        LandedCost spread = after(LandedCost.UNKNOWN, spread(usd(8_00), Basis.VALUE, line(1, 48_50, true, 30)));
        assertThatExceptionOfType(LandedCostRefused.SpreadBefore.class)
                .isThrownBy(() -> spread.decide(spread(usd(8_00), Basis.VALUE, line(1, 48_50, true, 30))));

        assertThatExceptionOfType(LandedCostRefused.ReasonMissing.class).isThrownBy(() -> spread.decide(back(" ")));
        LandedCost back = after(spread, back("other delivery"));
        assertThatExceptionOfType(LandedCostRefused.NothingToTakeBack.class)
                .isThrownBy(() -> back.decide(back("again")));
    }

    @Test
    void what_nothing_can_bear_is_refused() {
        assertThatExceptionOfType(LandedCostRefused.NothingWeighs.class)
                .isThrownBy(
                        () -> LandedCost.UNKNOWN.decide(spread(usd(8_00), Basis.LENGTH, line(1, 48_50, false, 1_440))))
                .withMessageContaining("has a length to spread by");
        assertThatExceptionOfType(LandedCostRefused.NothingToSpread.class)
                .isThrownBy(() -> LandedCost.UNKNOWN.decide(spread(usd(0), Basis.VALUE, line(1, 48_50, true, 30))));
        assertThatExceptionOfType(LandedCostRefused.OtherCurrency.class)
                .isThrownBy(() -> LandedCost.UNKNOWN.decide(
                        spread(Money.of(8_00, "EUR"), Basis.VALUE, line(1, 48_50, true, 30))));
    }

    private static LandedCost after(LandedCost before, LandedCostCommand command) {
        return before.evolve(before.decide(command).getFirst());
    }

    private static LandedCostCommand spread(Money amount, Basis basis, DeliveredLine line) {
        return new LandedCostCommand.Spread(
                new LandedCostId("LC-1"),
                LandedKind.FREIGHT,
                amount,
                basis,
                List.of(line),
                null,
                "",
                new PersonId("P-FIN"),
                Occurred.at(Instant.EPOCH));
    }

    private static LandedCostCommand back(String reason) {
        return new LandedCostCommand.TakeBack(
                new LandedCostId("LC-1"), reason, new PersonId("P-FIN"), Occurred.at(Instant.EPOCH));
    }

    private static DeliveredLine line(int line, long minor, boolean onReels, long... quantities) {
        List<DeliveredLine.Holding> holdings = new ArrayList<>();
        for (long quantity : quantities) {
            holdings.add(new DeliveredLine.Holding(onReels, "R-%d-%d".formatted(line, holdings.size()), quantity));
        }
        return new DeliveredLine("D-1", line, "ITEM-" + line, onReels, usd(minor), holdings);
    }

    private static List<Long> minor(List<Money> amounts) {
        return amounts.stream().map(Money::minor).toList();
    }

    private static Money usd(long minor) {
        return Money.of(minor, "USD");
    }
}
