package org.bandtrail.testing.sound.reels;

/** The shell. */
final class ReelAggregate {
    private Reel reel = new Reel(0);

    Reel reel() {
        return reel;
    }

    void on(ReelEvent.Received event) {
        reel = new Reel(event.mm());
    }
}
