/**
 * Tests of transfers and of the other ways a depot moves its stock: the rules alone, and over HTTP on PostgreSQL that what is
 * sent is on its way, that a short arrival is missing with its carrier, that calling off brings everything back, and that
 * bins, vehicles and setting aside lead where they say. A line that fails takes the whole request with it.
 * The audit reads zero after each.
 */
@NullMarked
package org.bandtrail.supplystock.transfers;

import org.jspecify.annotations.NullMarked;
