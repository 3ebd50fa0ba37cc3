/**
 * Tests of the rules of a delivery: what may be recorded, accepted and sent back, and that nothing of it counts twice.
 * Refusals are checked by the words a person reads. The way over the counter, with orders and reels, is tested in {@code receiving}.
 */
@NullMarked
package org.bandtrail.supplystock.deliveries;

import org.jspecify.annotations.NullMarked;
