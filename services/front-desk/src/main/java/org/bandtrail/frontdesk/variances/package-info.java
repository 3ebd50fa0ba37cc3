/**
 * Variances at the finance desk: what was paid beside what was quoted, and what was used beside what the kit lists
 * planned, by item and month. The page says in one sentence what both cost or saved, then shows the two tables. What
 * counts as the standard is reckoned by supply-stock; nothing is changed here.
 */
@NullMarked
package org.bandtrail.frontdesk.variances;

import org.jspecify.annotations.NullMarked;
