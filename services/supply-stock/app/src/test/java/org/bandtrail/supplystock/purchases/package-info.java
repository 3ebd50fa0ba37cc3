/**
 * Tests of orders. The rules are tested as given, when, then. The law, that what is ordered is what came plus what is
 * still to come, is checked over many random histories in {@code receiving}. So is the read model on a real PostgreSQL, where a
 * rebuild must give the same.
 */
@NullMarked
package org.bandtrail.supplystock.purchases;

import org.jspecify.annotations.NullMarked;
