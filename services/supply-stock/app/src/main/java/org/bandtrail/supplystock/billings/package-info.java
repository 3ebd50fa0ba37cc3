/**
 * The three-way match: what was ordered, what was received and accepted, what is billed. The figures of a purchase and
 * everything billed against it so far meet in one aggregate per purchase, so that two invoices approved at the same
 * moment cannot bill the same metre twice. A billing also says what the goods cost at receipt and what the difference
 * is; whoever approves carries it to the reels and batches (IAS 2 Inventories, paragraphs 10 and 11).
 *
 * <p>Wish: bill lines. Refused when a line does not match and nobody has accepted it.
 */
@NullMarked
package org.bandtrail.supplystock.billings;

import org.jspecify.annotations.NullMarked;
