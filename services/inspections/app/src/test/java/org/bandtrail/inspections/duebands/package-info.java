/**
 * Tests of when a look is due. Each reason has one test at its boundary. The read model is tested on a real PostgreSQL.
 */
@NullMarked
package org.bandtrail.inspections.duebands;

import org.jspecify.annotations.NullMarked;
