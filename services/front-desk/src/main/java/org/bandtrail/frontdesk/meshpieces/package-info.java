/**
 * Mesh that is used again, piece by piece: the list, one piece with its life, how worn it is and where it lies. Mesh
 * kept at a teardown appears here by itself. The pages move no material in the books; what changes hands between
 * depot and crew goes over the counter as ever.
 */
@NullMarked
package org.bandtrail.frontdesk.meshpieces;

import org.jspecify.annotations.NullMarked;
