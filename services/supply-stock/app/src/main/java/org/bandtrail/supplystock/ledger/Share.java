package org.bandtrail.supplystock.ledger;

import java.math.BigInteger;

/**
 * A part of an amount in whole minor units: round(amount x part / whole), halves rounded up. Parts cut at growing
 * marks, each the difference of two shares, add up to the amount exactly; this also holds when marks go below zero or
 * beyond the whole, as they do where the field was ahead of the books.
 */
final class Share {
    private Share() {}

    /**
     * The share.
     *
     * @param amount minor units, of either sign
     * @param part millimetres or pieces
     * @param whole millimetres or pieces, above zero
     */
    static long of(long amount, long part, long whole) {
        if (whole <= 0) {
            throw new IllegalArgumentException("A whole of [%d] has no parts.".formatted(whole));
        }
        BigInteger twice = BigInteger.TWO.multiply(BigInteger.valueOf(amount)).multiply(BigInteger.valueOf(part));
        BigInteger divisor = BigInteger.valueOf(whole).shiftLeft(1);
        BigInteger[] floor = twice.add(BigInteger.valueOf(whole)).divideAndRemainder(divisor);
        return (floor[1].signum() < 0 ? floor[0].subtract(BigInteger.ONE) : floor[0]).longValueExact();
    }
}
