/**
 * Sites: the list with what must be done about consents, one site with its ground, hours, hazards and history, the
 * consents with their owners, and the map. Everything is drawn here from answers of site-installs; a map needs no other
 * service, and shows pictures of one only where its address was set. The contact of an owner is shown to the lead alone.
 */
@NullMarked
package org.bandtrail.frontdesk.sites;

import org.jspecify.annotations.NullMarked;
