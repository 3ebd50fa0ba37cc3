/**
 * The audit page: the laws of the ledger with both their sides, and every place where books and field disagree. A
 * finding names a person, a reel and a day, and blames nobody; the depot settles it here, with a reason. The laws are
 * computed by supply-stock; this page only shows them.
 */
@NullMarked
package org.bandtrail.frontdesk.audit;

import org.jspecify.annotations.NullMarked;
