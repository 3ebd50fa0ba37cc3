/**
 * Tests of the journal. Lines and files are made without a database; the way over HTTP runs on a real one. Accounts and amounts
 * are invented, the digits of currencies are those of ISO 4217. The law of every journal is that debits are credits.
 */
@NullMarked
package org.bandtrail.supplystock.journal;

import org.jspecify.annotations.NullMarked;
