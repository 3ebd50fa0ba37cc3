/**
 * Tests of the drawings of sites and of the map. A place is where it belongs, tiles lie where their corners are, areas
 * are in the reader's unit. Pages are tested with the others, from recorded answers.
 */
@NullMarked
package org.bandtrail.frontdesk.sites;

import org.jspecify.annotations.NullMarked;
