package org.bandtrail.supplystock.deliveries;

/** How a reel or batch looked on arrival. */
public enum Condition {
    /** Nothing wrong with it. */
    SOUND,
    /** The wrapping is torn, the goods look sound; adhesive may have taken dust or damp. */
    WRAPPING_TORN,
    /** Not fit for use as it is. It is set aside, whatever else was ticked. */
    DAMAGED
}
