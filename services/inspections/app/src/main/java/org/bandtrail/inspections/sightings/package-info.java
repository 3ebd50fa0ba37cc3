/**
 * What somebody sees who goes to look at a band. "Not found", "not read", "band missing" and "nothing caught" are four
 * different answers, and a count on a full band is a lower bound, because a wrong zero or a cut-off count spoils every
 * figure made from it. Life stages are those of the spotted lanternfly (EPPO code LYCMDE); another animal on the band
 * has its own record with what was done for it and who took it.
 */
@NullMarked
package org.bandtrail.inspections.sightings;

import org.jspecify.annotations.NullMarked;
