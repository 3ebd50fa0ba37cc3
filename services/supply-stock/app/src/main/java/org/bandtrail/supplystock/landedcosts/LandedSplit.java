package org.bandtrail.supplystock.landedcosts;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costs.LargestRemainder;

/**
 * Spreads an amount over lines of deliveries and, within each line, over its reels and batches by quantity. Both steps
 * are by largest remainder (see {@link LargestRemainder}), so the shares of the lines add up to the amount, and those
 * of the reels to the share of their line. Valid for any amount, also negative, and lines of which at least one weighs
 * something.
 */
public final class LandedSplit {
    private LandedSplit() {}

    /**
     * What each line bears, in the order of the lines.
     *
     * @throws IllegalArgumentException if no line weighs anything on this basis
     */
    public static List<Money> lines(Money amount, Basis basis, List<DeliveredLine> lines) {
        return LargestRemainder.split(
                        amount.minor(),
                        lines.stream().map(line -> line.weight(basis)).toList())
                .stream()
                .map(minor -> Money.of(minor, amount.currency()))
                .toList();
    }

    /**
     * What each reel and batch bears; shares of nothing are left out.
     *
     * @throws IllegalArgumentException if no line weighs anything on this basis
     */
    public static List<LandedShare> shares(Money amount, Basis basis, List<DeliveredLine> lines) {
        List<Money> ofLines = lines(amount, basis, lines);
        List<LandedShare> shares = new ArrayList<>();
        for (int index = 0; index < lines.size(); index++) {
            if (ofLines.get(index).minor() != 0) {
                shares.addAll(within(lines.get(index), ofLines.get(index)));
            }
        }
        return List.copyOf(shares);
    }

    private static List<LandedShare> within(DeliveredLine line, Money amount) {
        List<Long> parts = LargestRemainder.split(
                amount.minor(),
                line.holdings().stream().map(DeliveredLine.Holding::quantity).toList());
        List<LandedShare> shares = new ArrayList<>();
        for (int index = 0; index < parts.size(); index++) {
            if (parts.get(index) != 0) {
                DeliveredLine.Holding holding = line.holdings().get(index);
                shares.add(new LandedShare(
                        line.deliveryId(),
                        line.line(),
                        holding.reel(),
                        holding.id(),
                        Money.of(parts.get(index), amount.currency())));
            }
        }
        return shares;
    }
}
