/**
 * Tests of the launcher: what a person meets when starting, killing and restarting Bandtrail on one machine. They run
 * a real PostgreSQL from the jar in temporary folders. What needs a container engine says loudly when it is skipped.
 */
@NullMarked
package org.bandtrail.local;

import org.jspecify.annotations.NullMarked;
