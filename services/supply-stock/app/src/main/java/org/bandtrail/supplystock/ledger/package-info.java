/**
 * The ledger: every move and every charge of every reel and batch, each with its value, and the sums that others read.
 * It has no wishes and no events of its own; it is one read model over what reels, batches and months of the books
 * tell.
 *
 * <p>Law: a line takes from its source what it gives to its target and its account, so over all places and accounts
 * value is conserved to the minor unit, and what stock is worth is what was paid less what accounts have paid. A reel
 * is charged at its own cost, as its events say (specific identification, IAS 2 Inventories, paragraphs 23-24).
 * Within stock a move takes its share of the value at the place it leaves, and all of it when it leaves nothing
 * behind. Fasteners are interchangeable: an item's batches form one pool, drawn oldest first or at the moving average
 * as the cost policy of the year says (paragraphs 25 and 27), so their charges come from the pool and not from the
 * batch's own events.
 *
 * <p>A line posts to the month in which it happened, or, when that month was closed before the line was heard, to the
 * first open one; it keeps its own time. What was used before its receipt was known stands under no item, without
 * value; the receipt names it, by lines through the place {@code not-received:}. What was used counts for the crew its person was in
 * then, and stays there when people change crews. Tables for readers: {@code
 * ledger_line}, {@code ledger_account} (what accounts paid, by month), {@code ledger_trial}, {@code ledger_day},
 * {@code ledger_place}.
 */
@NullMarked
package org.bandtrail.supplystock.ledger;

import org.jspecify.annotations.NullMarked;
