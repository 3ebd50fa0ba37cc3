/**
 * What material costs, in whole minor units, so that no cent appears or disappears. A reel is charged at its own
 * actual cost (specific identification, IAS 2 paragraphs 23-24); interchangeable fasteners are drawn oldest first
 * (FIFO, IAS 2 paragraphs 25 and 27). Every split of an amount adds up to the amount, in whatever order the pieces are
 * cut. The classes are pure functions and values: no event, table or clock is known here.
 */
@NullMarked
package org.bandtrail.supplystock.costs;

import org.jspecify.annotations.NullMarked;
