package org.bandtrail.testing.broken.doors.contract.v1;

/** A reel is told of. */
public record ReelTold(String reelId) {}
