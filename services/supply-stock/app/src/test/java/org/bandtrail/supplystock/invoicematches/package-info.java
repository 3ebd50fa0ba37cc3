/**
 * Tests of {@code invoicematches}. The whole way runs on a real PostgreSQL: order, delivery, file, match, approval, and
 * what it does to the cost of reels and sites. {@link org.bandtrail.supplystock.invoicematches.BoughtGoods} buys them.
 */
@NullMarked
package org.bandtrail.supplystock.invoicematches;

import org.jspecify.annotations.NullMarked;
