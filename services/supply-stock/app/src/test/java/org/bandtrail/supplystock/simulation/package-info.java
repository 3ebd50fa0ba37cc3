/**
 * The laws over everything at once: orders, receipts, bins, transfers, slitting, handouts, fittings, returns, counts, changed
 * costs, write-downs, closed months and late facts in random histories, on a real PostgreSQL. An auditor who reads nothing
 * but the stored events, as text, predicts what every read model must say; length, pieces and money have to agree to the
 * smallest unit. The audit has to read zero at the end, and no wish may break anything.
 */
@NullMarked
package org.bandtrail.supplystock.simulation;

import org.jspecify.annotations.NullMarked;
