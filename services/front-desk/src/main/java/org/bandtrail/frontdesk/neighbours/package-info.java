/**
 * The three services behind the front desk, as it speaks with them: supply-stock, site-installs and inspections. Every
 * request carries the shared key and the identity of the person who acts; every answer is a record of what was said,
 * lengths in whole millimetres. A refusal comes back as {@link org.bandtrail.frontdesk.neighbours.NeighbourRefused}
 * with the service's own words, silence as {@link org.bandtrail.frontdesk.neighbours.NeighbourSilent}.
 */
@NullMarked
package org.bandtrail.frontdesk.neighbours;

import org.jspecify.annotations.NullMarked;
