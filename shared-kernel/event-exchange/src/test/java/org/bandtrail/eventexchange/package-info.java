/**
 * Tests of how services tell each other what happened. {@code FeedTransportContract} is what every transport must pass,
 * on a real PostgreSQL and a real server with a faulty proxy in between. Everything that a test publishes is a
 * {@code NoteWritten}, a contract made for the tests.
 */
@NullMarked
package org.bandtrail.eventexchange;

import org.jspecify.annotations.NullMarked;
