/**
 * Work plans: their life, what they need, and their rows. A plan that was agreed is counted on by others, so its
 * changes need reasons. Rows follow from events alone and come out the same however often they are written.
 */
@NullMarked
package org.bandtrail.siteinstalls.workplans;

import org.jspecify.annotations.NullMarked;
