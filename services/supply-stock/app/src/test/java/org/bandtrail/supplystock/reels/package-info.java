/**
 * Tests of reels: the rules by given, when and then; the law by random histories; the stored forms by golden files. The
 * read model and the wiring are tested on a real PostgreSQL. {@link org.bandtrail.supplystock.reels.ReelSamples} has the words the
 * tests share.
 */
@NullMarked
package org.bandtrail.supplystock.reels;

import org.jspecify.annotations.NullMarked;
