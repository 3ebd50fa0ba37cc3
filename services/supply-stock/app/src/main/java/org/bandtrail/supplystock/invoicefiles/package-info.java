/**
 * A supplier's invoice or credit note as a document: read from UBL 2.1 (OASIS) or CSV, or written by hand, and checked
 * for its own arithmetic. Nothing here knows orders, deliveries or tables; a file is either read whole or refused with
 * every place that is wrong. Amounts are whole minor units of one currency; quantities and prices keep the digits the
 * supplier wrote.
 */
@NullMarked
package org.bandtrail.supplystock.invoicefiles;

import org.jspecify.annotations.NullMarked;
