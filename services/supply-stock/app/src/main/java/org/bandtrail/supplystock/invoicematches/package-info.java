/**
 * Invoices beside orders and deliveries: a file is looked at before it is kept, each line finds its order line, the
 * match says in a sentence what is wrong, and an approval bills the lines and carries what the invoice costs more or
 * less than the receipts to the very reels and batches. Everything an approval does is one work.
 * All of it happens, or nothing.
 */
@NullMarked
package org.bandtrail.supplystock.invoicematches;

import org.jspecify.annotations.NullMarked;
