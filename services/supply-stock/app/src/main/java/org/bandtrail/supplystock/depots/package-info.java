/**
 * A depot is a store from which crews are served. It is a name for a place; what lies there is found in the balances of
 * reels and batches. Wishes: open a depot. Refused if its identity is taken, because two stores under one name would
 * mix their stock for ever.
 */
@NullMarked
package org.bandtrail.supplystock.depots;

import org.jspecify.annotations.NullMarked;
