/**
 * Tests of inspections. Rule tests need nothing; law tests run many random histories on the pure rules; the rest runs
 * the service on a real PostgreSQL. {@link org.bandtrail.inspections.OnPostgres} starts one for all of them.
 */
@NullMarked
package org.bandtrail.inspections;

import org.jspecify.annotations.NullMarked;
