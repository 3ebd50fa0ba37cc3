/**
 * Sites: the places where bands hang, each with a name, perhaps a point on the map and notes on how to get there. A
 * site carries the cost of the material used on its trees. {@code RegisterSite} adds one; it is refused when the
 * identity is taken. A crew may report work at a site nobody registered: that is a fact and is flagged, not refused.
 * Consent and hazards of a site are not kept yet.
 */
@NullMarked
package org.bandtrail.siteinstalls.sites;

import org.jspecify.annotations.NullMarked;
