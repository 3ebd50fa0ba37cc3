package org.bandtrail.testing.broken.types.contract.v1;

/** Its name is wrong or taken. */
public record ReelTold(String reelId) {
    /** The name in the envelope. */
    public static final String TYPE = "types.reel-told.v1";
}
