package org.bandtrail.testing.broken.circle.reels;

import org.bandtrail.testing.broken.circle.trees.Tree;

/** Knows who knows it. */
public record Reel(Tree other) {}
