/**
 * Checks of the demo season: that its files are what the writer writes and tell one consistent story, and that the
 * loader sends them in order, once, and says where it stopped. Services are stood in for by a recording HTTP server
 * here; the journeys that run against the real ones start the whole house. Nothing here looks at a database.
 */
@NullMarked
package org.bandtrail.local.season;

import org.jspecify.annotations.NullMarked;
