/**
 * Tests of the front desk. Services are played by a recorded one: a real HTTP server that answers with JSON files from
 * {@code recorded/} and keeps what it was asked. Sign-in and people run on a real PostgreSQL; nothing of our own is
 * mocked.
 */
@NullMarked
package org.bandtrail.frontdesk;

import org.jspecify.annotations.NullMarked;
