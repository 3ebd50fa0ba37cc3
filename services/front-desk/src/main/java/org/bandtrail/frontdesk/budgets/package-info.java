/**
 * What may be spent on what, beside what was spent and what is ordered: one calm bar for each budget, with a table that
 * says the same. A budget warns and stops nobody. What counts is reckoned by supply-stock; only names are added here.
 */
@NullMarked
package org.bandtrail.frontdesk.budgets;

import org.jspecify.annotations.NullMarked;
