package org.bandtrail.testing.broken.nested.reels;

import org.bandtrail.testing.broken.nested.reels.below.Core;

/** What its feature shows. */
public record Reel(Core core) {}
