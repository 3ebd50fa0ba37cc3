/**
 * Tests of boundaries: shapes that are taken, turned or refused, and their size against GeographicLib. Each refusal
 * stands beside the shape that is allowed. The figures are those of the check values, F6.
 */
@NullMarked
package org.bandtrail.siteinstalls.boundaries;

import org.jspecify.annotations.NullMarked;
