package org.bandtrail.testing.broken.circle.trees;

import org.bandtrail.testing.broken.circle.reels.Reel;

/** Knows who knows it. */
public record Tree(Reel other) {}
