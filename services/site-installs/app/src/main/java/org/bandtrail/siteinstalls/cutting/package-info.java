/**
 * Cutting: how long the pieces are that go round a trunk, and how many pins hold them. Pure functions of a girth and
 * the values of a policy; no value of the trade is written here as a constant. Lengths are rounded up to what the
 * crew's measuring tape shows ({@link org.bandtrail.siteinstalls.cutting.TapeMeasure}), because a piece cut short
 * does not go round.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutting;

import org.jspecify.annotations.NullMarked;
