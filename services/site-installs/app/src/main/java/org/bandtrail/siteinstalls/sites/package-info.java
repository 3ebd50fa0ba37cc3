/**
 * Sites: the places where bands hang, each with a name, a boundary or a point, notes on how to get there, opening hours
 * and hazards. A site carries the cost of the material used on its trees. {@code RegisterSite} is refused when the
 * identity is taken; every change keeps the value it replaces in the site's history. A closed site takes no new plans.
 * A crew may report work at a site nobody registered or that is closed: that is a fact and is flagged, not refused.
 */
@NullMarked
package org.bandtrail.siteinstalls.sites;

import org.jspecify.annotations.NullMarked;
