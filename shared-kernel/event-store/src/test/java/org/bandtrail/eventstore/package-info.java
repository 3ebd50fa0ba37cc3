/**
 * Tests of the event store on a real PostgreSQL. What can only go wrong with several writers at once is simulated with
 * seeded writers that dawdle and roll back. Feature rules are tested in their services, not here.
 */
@NullMarked
package org.bandtrail.eventstore;

import org.jspecify.annotations.NullMarked;
