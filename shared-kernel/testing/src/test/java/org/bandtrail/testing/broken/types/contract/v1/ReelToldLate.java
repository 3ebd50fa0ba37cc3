package org.bandtrail.testing.broken.types.contract.v1;

/** Its name is wrong or taken. */
public record ReelToldLate(String reelId) {
    /** The name in the envelope. */
    public static final String TYPE = "types.reel-told-late.v2";
}
