/**
 * Budgets: what may be spent of a grant, at a site, on a kind of material, over some months; each of the three may be left
 * out. Wishes: set a budget, change its amount with a reason, drop it with a reason. Beside each stands what was spent
 * and what is committed by open orders. A budget warns and refuses nothing: material that a crew needs is never kept from
 * it by a sum.
 */
@NullMarked
package org.bandtrail.supplystock.budgets;

import org.jspecify.annotations.NullMarked;
