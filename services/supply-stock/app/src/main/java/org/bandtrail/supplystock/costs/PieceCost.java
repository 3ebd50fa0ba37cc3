package org.bandtrail.supplystock.costs;

import java.math.BigInteger;

/**
 * What the pieces cut from one reel, or taken from one batch, cost: cumulative rounding of one bought total.
 *
 * <p>The first n of N units cost C(n) = round(T n / N), T being the bought total in minor units and halves rounded up.
 * A piece that moves the used-up amount from a to b costs C(b) - C(a). The differences telescope, so all pieces of a
 * reel cost T together, whatever their sizes and order, and no piece is ever off by a whole minor unit. Beyond the ends
 * nothing changes: below 0 units the cost is 0, above N it is T, because a reel that gave more than the books knew did
 * not cost more than was paid for it.
 *
 * <p>Source: specific identification of cost, IAS 2 Inventories paragraphs 23-24 (a reel is identified and assigned to
 * one site after the other); the cumulative form is the usual defence against rounding leaks. Valid for totals from 0
 * and 1 unit upwards.
 *
 * @param total T, what the whole reel or batch cost, in minor units, 0 or more (donated material costs 0)
 * @param units N, what was bought, in millimetres or pieces, 1 or more
 */
public record PieceCost(long total, long units) {
    public PieceCost {
        if (total < 0) {
            throw new IllegalArgumentException(
                    "Total cost [%d] is negative. What was bought cost 0 or more.".formatted(total));
        }
        if (units < 1) {
            throw new IllegalArgumentException(
                    "Bought units [%d] are fewer than 1. Give the length in mm or the pieces.".formatted(units));
        }
    }

    /**
     * The cost of the first n units.
     *
     * @param n units used up so far; below 0 counts as 0, above {@link #units} as all
     * @return minor units from 0 to {@link #total}, rounded half up
     */
    public long ofFirst(long n) {
        BigInteger twice = BigInteger.TWO
                .multiply(BigInteger.valueOf(total))
                .multiply(BigInteger.valueOf(Math.clamp(n, 0, units)));
        BigInteger bought = BigInteger.valueOf(units);
        return twice.add(bought).divide(bought.shiftLeft(1)).longValueExact();
    }

    /**
     * The cost of one piece.
     *
     * @param before units used up before the piece
     * @param after units used up with it; fewer than before when a piece comes back, whose cost is then negative
     * @return minor units
     */
    public long between(long before, long after) {
        return ofFirst(after) - ofFirst(before);
    }
}
