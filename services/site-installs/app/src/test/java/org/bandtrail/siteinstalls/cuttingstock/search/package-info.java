/**
 * Checks of the search from within: its linear program against a library's, its sums and its knapsack against trying
 * everything. Nothing here is timed. Random jobs follow from a seed.
 */
@NullMarked
package org.bandtrail.siteinstalls.cuttingstock.search;

import org.jspecify.annotations.NullMarked;
