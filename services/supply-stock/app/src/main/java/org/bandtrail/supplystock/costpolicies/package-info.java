/**
 * How fasteners are valued, year by year: oldest first or at the moving average. Both are allowed for interchangeable
 * supplies, and all of similar nature take the same (IAS 2 Inventories, paragraph 25; 27 defines them; 26: another
 * place alone is no reason for another formula). Last in first out is not offered, because the standard does not
 * allow it.
 *
 * <p>A policy begins with a calendar year of UTC and holds until another begins. It is set before its year has any
 * entry, with a reason; a year that has begun keeps what it began with. Until somebody sets one, the oldest pieces go
 * first. Reels are no matter of policy: each is known by itself and charged at its own cost (paragraphs 23-24).
 */
@NullMarked
package org.bandtrail.supplystock.costpolicies;

import org.jspecify.annotations.NullMarked;
