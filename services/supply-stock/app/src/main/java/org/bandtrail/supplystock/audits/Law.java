package org.bandtrail.supplystock.audits;

/**
 * One law of the books with both its sides.
 *
 * @param name what it is about, for example {@code tape: where it is}
 * @param statement the law in words
 * @param left left side in the unit
 * @param right right side in the unit
 * @param unit {@code mm}, {@code pieces}, {@code events} or a currency's minor unit, for example {@code USD minor}
 */
public record Law(String name, String statement, long left, long right, String unit) {
    /** Left minus right; zero when the law holds. */
    public long difference() {
        return left - right;
    }
}
