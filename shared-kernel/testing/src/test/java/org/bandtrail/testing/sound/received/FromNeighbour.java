package org.bandtrail.testing.sound.received;

import org.bandtrail.testing.broken.neighbour.contract.v1.BandSeen;

/** Translates. */
final class FromNeighbour {
    private FromNeighbour() {}

    static long heard(BandSeen event) {
        return event.girthMm();
    }
}
