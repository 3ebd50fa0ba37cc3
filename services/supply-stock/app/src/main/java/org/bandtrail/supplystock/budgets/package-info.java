/**
 * Budgets: what may be spent of a grant, at a site, on a kind of material, over some months; each of the three may be left
 * out. Wishes: set a budget, change its amount with a reason, drop it with a reason. Beside each stands what was spent
 * and what is committed by open orders. A budget warns and refuses nothing: material that a crew needs is never kept from
 * it by a sum.
 *
 * <p>Used, scrapped, missing and written down stand apart. What of them counts as spent is the budget's own policy: all
 * four, unless it was set to count only what sites were charged. What a person missed counts for a site where the person
 * charged just that one site in the month, and is split between grants like what that site was charged; what is missing
 * otherwise, and every write-down, belongs to no site and no grant and counts only where a budget is for all of them.
 */
@NullMarked
package org.bandtrail.supplystock.budgets;

import org.jspecify.annotations.NullMarked;
