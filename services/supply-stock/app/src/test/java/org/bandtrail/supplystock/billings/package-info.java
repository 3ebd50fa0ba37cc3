/**
 * Tests of {@code billings}. The match is tested line by line at its boundaries; random invoices, part invoices and
 * credit notes against one order line must not lose a cent. Nothing here needs the database.
 */
@NullMarked
package org.bandtrail.supplystock.billings;

import org.jspecify.annotations.NullMarked;
