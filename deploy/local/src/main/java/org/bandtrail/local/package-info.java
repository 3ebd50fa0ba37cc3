/**
 * The launcher: everything Bandtrail needs, on one machine, with one command.
 *
 * <p>It starts a real PostgreSQL 18 from a jar (the data stays in a folder and survives restarts), gives each service
 * its own database and database user, and then starts the four services in this one process, each with its own Spring
 * context, port and configuration. The services do not know that they share a process: they talk over loopback HTTP
 * exactly as they do when each runs alone. {@link org.bandtrail.local.Launcher} is the door; a start that cannot
 * succeed ends with a {@link org.bandtrail.local.CannotStart} whose message says what a person can do about it.
 */
@NullMarked
package org.bandtrail.local;

import org.jspecify.annotations.NullMarked;
