package org.bandtrail.supplystock.reordering;

/** The one refusal of numbers out of range: which number, its value, what is allowed. */
final class InRange {
    private InRange() {}

    /**
     * Returns the value if it lies between the limits, both allowed.
     *
     * @param what names the input in the message, with its unit
     * @throws IllegalArgumentException if it lies outside or is not a number
     */
    static double checked(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "%s [%s] is out of range. Give %s to %s.".formatted(what, plain(value), plain(least), plain(most)));
        }
        return value;
    }

    private static String plain(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
