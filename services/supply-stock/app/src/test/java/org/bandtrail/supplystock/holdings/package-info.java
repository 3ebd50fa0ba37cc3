/**
 * Tests of what reels and batches share. They need neither database nor service. Places are written as in the contracts.
 */
@NullMarked
package org.bandtrail.supplystock.holdings;

import org.jspecify.annotations.NullMarked;
