package org.bandtrail.testing.broken.nested.reels.below;

/** What its feature keeps to itself, were it not public for the package above. */
public record Core(long mm) {}
