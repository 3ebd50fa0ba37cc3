/**
 * How a page of rows becomes the arrays of one statement. PostgreSQL's {@code unnest} turns them back into rows, so a
 * page of two thousand events costs as many statements as a page of one. Used by the projections of this service; it
 * knows nothing of bands.
 */
@NullMarked
package org.bandtrail.inspections.columns;

import org.jspecify.annotations.NullMarked;
