/**
 * Tests of the finder of causes. A true day in the field is made up, one mistake is put into what the books are told, and
 * the finder has to name that mistake. The books themselves are the real rules of reels, so that the findings are those
 * a depot would see.
 */
@NullMarked
package org.bandtrail.supplystock.causes;

import org.jspecify.annotations.NullMarked;
