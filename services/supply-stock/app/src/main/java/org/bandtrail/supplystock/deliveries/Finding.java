package org.bandtrail.supplystock.deliveries;

/**
 * Something about a delivery that is not as it should be.
 *
 * @param line of the delivery
 * @param id reel or batch, empty if it is about the whole line
 * @param expected what should have come, in words
 * @param found what came, in words
 */
public record Finding(int line, String id, What what, String expected, String found) {
    /** What kind of thing is wrong. */
    public enum What {
        /** Less than the order, the paper or the label says. */
        SHORT,
        /** More than was to come. */
        OVER,
        /** Not fit for use. */
        DAMAGED,
        /** The wrapping is torn. */
        WRAPPING_TORN,
        /** Another item than ordered. */
        WRONG_ITEM,
        /** Wider or narrower than the item. */
        WRONG_WIDTH,
        /** The adhesive is past its day. */
        EXPIRED,
        /** Nobody waits for it: the order was closed or cancelled, or has no such line. */
        NOT_EXPECTED
    }
}
