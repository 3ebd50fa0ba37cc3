/**
 * Tests of {@code kitlists}: from girths to lengths, and from lengths to reels. They need no framework and no database.
 * Each rule of the choice stands with the reel it would otherwise have taken.
 */
@NullMarked
package org.bandtrail.supplystock.kitlists;

import org.jspecify.annotations.NullMarked;
