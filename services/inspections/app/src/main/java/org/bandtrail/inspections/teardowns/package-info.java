/**
 * Teardowns as they come in. Tape always goes into the bag, mesh and fasteners go into the bag or back to the person.
 * What a teardown means is decided by the band, see {@link org.bandtrail.inspections.bands.Band}.
 */
@NullMarked
package org.bandtrail.inspections.teardowns;

import org.jspecify.annotations.NullMarked;
