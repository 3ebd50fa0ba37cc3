/**
 * What was spent, read from the sums of the ledger and priced by nobody here: by site, tree, item, crew, person, grant and
 * month, with what was used, scrapped, missing and written down apart, and put beside the work done. A grant's part is
 * split off each smallest sum by largest remainder, so along every way of adding up the rows make the same total. The
 * identity received = in stock + charged + missing + written down is read from receipts, places and accounts, each on its
 * own, so it is a check. Amounts of two currencies are never added.
 */
@NullMarked
package org.bandtrail.supplystock.spend;

import org.jspecify.annotations.NullMarked;
