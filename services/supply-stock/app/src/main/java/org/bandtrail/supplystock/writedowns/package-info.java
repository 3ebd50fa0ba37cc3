/**
 * Stock that is worth less than it cost is written down to what it would still fetch or save (IAS 2 Inventories,
 * paragraph 9: the lower of cost and net realisable value; paragraph 34: the write-down is an expense when it happens).
 * The rule itself is the reel's and the batch's; here a person asks for it and the list of all write-downs is kept.
 * Nothing is ever written up again by hand.
 */
@NullMarked
package org.bandtrail.supplystock.writedowns;

import org.jspecify.annotations.NullMarked;
