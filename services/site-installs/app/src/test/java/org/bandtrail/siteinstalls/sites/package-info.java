/**
 * Tests of sites. Each refusal stands beside the wish that is allowed. Points are tested at the edges of the map.
 */
@NullMarked
package org.bandtrail.siteinstalls.sites;

import org.jspecify.annotations.NullMarked;
