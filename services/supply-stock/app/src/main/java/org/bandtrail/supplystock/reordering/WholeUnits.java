package org.bandtrail.supplystock.reordering;

/**
 * The only rounding of this package: up to a whole millimetre or piece, because half a pin cannot be ordered and less
 * than computed would miss the service level. A millionth of a unit is taken for noise of the floating-point sum, so
 * that 300.0000000001 stays 300.
 */
final class WholeUnits {
    private static final double NOISE = 1e-6;
    private static final double MOST = 1e18;

    private WholeUnits() {}

    /**
     * Rounds up.
     *
     * @throws IllegalArgumentException if the value is not a number or beyond 10^18 units
     */
    static long roundedUp(double units) {
        return (long) Math.ceil(InRange.checked("Quantity (mm or pieces)", units, -MOST, MOST) - NOISE);
    }
}
