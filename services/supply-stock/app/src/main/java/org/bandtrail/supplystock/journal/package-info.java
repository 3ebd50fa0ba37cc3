/**
 * The journal of a month: what the ledger moved between stock, suppliers, sites and losses, as balanced debits and credits
 * on the organisation's own accounts. Wish: map our accounts to its accounts from a month on; the six general ones must
 * all be there, so nothing can be without an account, and a closed month keeps its mapping. A journal that does not balance
 * is never exported, and that of a closed month is the same to the byte each time.
 */
@NullMarked
package org.bandtrail.supplystock.journal;

import org.jspecify.annotations.NullMarked;
