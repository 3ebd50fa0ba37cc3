/**
 * Tests of what is seen on a visit. The four answers stay four. Values out of range are refused by name.
 */
@NullMarked
package org.bandtrail.inspections.sightings;

import org.jspecify.annotations.NullMarked;
