/**
 * The books for finance: the trial of a month, the books at any past moment, the lines behind each figure, and how
 * fasteners are valued. All figures are those of supply-stock's ledger; nothing is reckoned here. Everybody may read;
 * finance and the lead set the cost policy.
 */
@NullMarked
package org.bandtrail.frontdesk.books;

import org.jspecify.annotations.NullMarked;
