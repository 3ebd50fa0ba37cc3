/**
 * Tests of the books as people read them. What the sums by day and month say is compared with every line of the
 * ledger added up one by one, at random moments of random histories. A cent changed by hand has to show.
 */
@NullMarked
package org.bandtrail.supplystock.books;

import org.jspecify.annotations.NullMarked;
