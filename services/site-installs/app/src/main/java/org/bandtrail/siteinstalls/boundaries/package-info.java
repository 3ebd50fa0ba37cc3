/**
 * Boundaries: the ground of a site as a polygon on WGS 84, read from GeoJSON (RFC 7946). A ring must be closed and must
 * not cross itself; a ring that runs the wrong way round is turned and that is said. Area and perimeter are geodesic.
 * Everything here is a pure function; Java Topology Suite judges the shape, GeographicLib measures it.
 */
@NullMarked
package org.bandtrail.siteinstalls.boundaries;

import org.jspecify.annotations.NullMarked;
