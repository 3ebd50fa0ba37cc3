package org.bandtrail.testing.sound.reels;

import java.time.Instant;

/** What is asked of a reel. */
public sealed interface ReelCommand {
    /** Take it in. */
    record Receive(long mm, Instant at) implements ReelCommand {}
}
