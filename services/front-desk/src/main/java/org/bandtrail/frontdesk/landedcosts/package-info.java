/**
 * Freight and duty at the finance desk: what was spread over which goods, and spreading an amount of an invoice or by
 * hand. Before anything is stored the page shows what each line would bear. The split itself is supply-stock's.
 */
@NullMarked
package org.bandtrail.frontdesk.landedcosts;

import org.jspecify.annotations.NullMarked;
