/**
 * Tests of {@code invoicefiles}. Sums are checked against figures of two public examples, written anew as files of our
 * own with invented names. Files that attack the reader are made here and must be refused.
 */
@NullMarked
package org.bandtrail.supplystock.invoicefiles;

import org.jspecify.annotations.NullMarked;
