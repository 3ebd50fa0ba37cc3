/**
 * Devices: the kinds of things that hang on a trunk, each with its own list of pieces. A sticky band under a guard is
 * one kind; a band under window screen, a burlap band and a funnel trap are others. The kinds are data in {@code
 * defaults/devices.json}, with sources; {@link org.bandtrail.siteinstalls.devices.PieceList} calculates what one of
 * them takes for a girth under a policy. Another kind is another entry there; a length no rule here can tell is one
 * more class. Which kind was fitted is a fact of the band and is told by the crew.
 */
@NullMarked
package org.bandtrail.siteinstalls.devices;

import org.jspecify.annotations.NullMarked;
