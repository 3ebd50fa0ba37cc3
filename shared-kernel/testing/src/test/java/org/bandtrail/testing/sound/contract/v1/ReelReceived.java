package org.bandtrail.testing.sound.contract.v1;

/** A reel came in. */
public record ReelReceived(String reelId, long lengthMm) {
    /** The name in the envelope. */
    public static final String TYPE = "sound.reel-received.v1";
}
