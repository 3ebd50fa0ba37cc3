package org.bandtrail.testing.sound.published;

import org.bandtrail.testing.sound.contract.v1.ReelReceived;
import org.bandtrail.testing.sound.reels.ReelEvent;

/** Translates. */
final class PublishedReels {
    private PublishedReels() {}

    static ReelReceived told(ReelEvent.Received event) {
        return new ReelReceived("T-1", event.mm());
    }
}
