/**
 * A supply item is a kind of tape, mesh or fastener the programme buys: its measures, its usual cost and how it is
 * supplied (lead time, its spread, the service level wanted), from which reorder points follow. An item says what a
 * reel or batch is; it holds no stock itself. Its supply figures are versioned by their events, each with a reason.
 */
@NullMarked
package org.bandtrail.supplystock.items;

import org.jspecify.annotations.NullMarked;
