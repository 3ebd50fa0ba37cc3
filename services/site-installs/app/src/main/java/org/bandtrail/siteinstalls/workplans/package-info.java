/**
 * Work plans: which trees get their bands on which day, by which crew, from which depot, in the order of the walk. A
 * plan is drafted, agreed, changed as often as the weather wants it, and done or called off. It keeps the lengths that
 * were reckoned for it and the policy they follow. What an agreed plan needs is told to supply stock, after each change
 * anew. A plan is a wish: what makes one ready to be planned stands in {@code planmaking}.
 */
@NullMarked
package org.bandtrail.siteinstalls.workplans;

import org.jspecify.annotations.NullMarked;
