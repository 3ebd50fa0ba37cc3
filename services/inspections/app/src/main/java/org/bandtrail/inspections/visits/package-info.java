/**
 * Visits as they come in: one at a time from the desk, or a day's worth from a device that had no signal. Each record
 * is done once under its command id; a record that cannot be read is answered with what to do and keeps nothing else
 * out. What a visit means is decided by the band, see {@link org.bandtrail.inspections.bands.Band}.
 */
@NullMarked
package org.bandtrail.inspections.visits;

import org.jspecify.annotations.NullMarked;
