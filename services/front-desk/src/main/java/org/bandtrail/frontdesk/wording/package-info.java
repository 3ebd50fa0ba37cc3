/**
 * How the front desk speaks: lengths in the reader's units, money, days in words, names of people, and lists as CSV.
 * Stored values are whole millimetres, pieces and minor units; nothing here changes them, it only puts them in words.
 * Rounding for the eye is always beside the exact stored value, which stands in the title of the figure.
 */
@NullMarked
package org.bandtrail.frontdesk.wording;

import org.jspecify.annotations.NullMarked;
