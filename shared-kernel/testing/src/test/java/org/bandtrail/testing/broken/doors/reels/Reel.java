package org.bandtrail.testing.broken.doors.reels;

import org.bandtrail.testing.broken.doors.contract.v1.ReelTold;
import org.bandtrail.testing.broken.neighbour.bands.Band;
import org.bandtrail.testing.broken.neighbour.contract.v1.BandSeen;

/** Knows the own contract, a foreign one and the inside of another app. */
public record Reel(ReelTold told, BandSeen seen, Band band) {}
