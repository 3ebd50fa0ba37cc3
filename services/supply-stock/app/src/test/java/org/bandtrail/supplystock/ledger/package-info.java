/**
 * Tests of the ledger. Random histories are decided by the rules of reels and batches and posted by the projection on a
 * real PostgreSQL, in pages of any size. Quantities, values and charges are then worked out again from the events
 * alone, by plain sums that know nothing of pages, pools and tables.
 */
@NullMarked
package org.bandtrail.supplystock.ledger;

import org.jspecify.annotations.NullMarked;
