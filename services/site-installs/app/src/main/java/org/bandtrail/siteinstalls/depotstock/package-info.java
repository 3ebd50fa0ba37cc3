/**
 * What lies in which depot, as supply-stock told it: reels with their length, bin and expiry, batches with their
 * pieces, and what kits have reserved. Work plans and cut plans count on it; it is a copy, the ledger is with
 * supply-stock and may be a moment ahead. Every change is added once, in the transaction of the inbox, so what lies
 * somewhere is the sum of what was told. What is set aside or reserved is there but not free.
 */
@NullMarked
package org.bandtrail.siteinstalls.depotstock;

import org.jspecify.annotations.NullMarked;
