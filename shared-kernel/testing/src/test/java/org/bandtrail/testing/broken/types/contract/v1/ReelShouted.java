package org.bandtrail.testing.broken.types.contract.v1;

/** Its name is wrong or taken. */
public record ReelShouted(String reelId) {
    /** The name in the envelope. */
    public static final String TYPE = "REEL";
}
