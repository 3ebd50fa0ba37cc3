/**
 * Tests of the bands. Rules are shown by given, when, then on the pure record; laws by random histories told in random
 * order. Stored events are pinned by golden files.
 */
@NullMarked
package org.bandtrail.inspections.bands;

import org.jspecify.annotations.NullMarked;
