/**
 * Tests of what happens at the counter when goods arrive. Costs, units and findings are checked on pure rules; the whole
 * way from the quote to the reel on its shelf, and back to the supplier, runs over HTTP on a real PostgreSQL. The law test
 * runs many random histories of orders and deliveries.
 */
@NullMarked
package org.bandtrail.supplystock.receiving;

import org.jspecify.annotations.NullMarked;
