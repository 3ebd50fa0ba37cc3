package org.bandtrail.testing.broken.nested.trees;

import org.bandtrail.testing.broken.nested.reels.below.Core;

/** Reaches below its neighbour. */
public record Tree(Core core) {}
