package org.bandtrail.supplystock.costs;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Splits a whole amount by weights so that the parts add up to it exactly: the method of largest remainders.
 *
 * <p>With amount A and weights w<sub>i</sub> of sum W, part i first gets floor(A w<sub>i</sub> / W); the units still
 * missing, fewer than there are parts, go one each to the parts with the largest remainders A w<sub>i</sub> mod W, and
 * among equal remainders to the earlier part. Every part therefore differs from its exact quota by less than one unit.
 * Nothing is rounded elsewhere: the arithmetic is on whole numbers of any size.
 *
 * <p>Source: Hamilton's (Hare-Niemeyer) apportionment, M. L. Balinski and H. P. Young, Fair Representation, 2nd ed.,
 * Brookings 2001. Valid for any amount, also negative (a credit note mirrors its invoice), and non-negative weights of
 * which at least one is above zero.
 */
public final class LargestRemainder {
    private LargestRemainder() {}

    /**
     * Splits an amount, for example freight in minor units over the lines of a delivery.
     *
     * @param amount what is split, in its smallest unit
     * @param weights by what it is split, for example the value of each line; 0 gets nothing
     * @return one part per weight, in the same order; their sum is the amount
     * @throws IllegalArgumentException naming the weight if there is none, one is negative or all are 0
     */
    public static List<Long> split(long amount, List<Long> weights) {
        BigInteger sum = sumOf(weights);
        BigInteger size = BigInteger.valueOf(amount).abs();
        List<BigInteger> remainders = new ArrayList<>();
        long[] parts = new long[weights.size()];
        long missing = size.longValueExact();
        for (int part = 0; part < parts.length; part++) {
            BigInteger[] quota =
                    size.multiply(BigInteger.valueOf(weights.get(part))).divideAndRemainder(sum);
            parts[part] = quota[0].longValueExact();
            remainders.add(quota[1]);
            missing -= parts[part];
        }
        IntStream.range(0, parts.length)
                .boxed()
                .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
                .limit(missing)
                .forEach(part -> parts[part]++);
        return IntStream.range(0, parts.length)
                .mapToObj(part -> amount < 0 ? -parts[part] : parts[part])
                .toList();
    }

    private static BigInteger sumOf(List<Long> weights) {
        BigInteger sum = BigInteger.ZERO;
        for (int part = 0; part < weights.size(); part++) {
            if (weights.get(part) < 0) {
                throw new IllegalArgumentException("Weight %d of %d is [%d]. A weight is 0 or more."
                        .formatted(part + 1, weights.size(), weights.get(part)));
            }
            sum = sum.add(BigInteger.valueOf(weights.get(part)));
        }
        if (sum.signum() == 0) {
            throw new IllegalArgumentException("Weights %s add up to 0. Give at least one above 0.".formatted(weights));
        }
        return sum;
    }
}
