/**
 * How services tell each other what happened. A service writes the events it publishes to its {@code Outbox} in the
 * transaction of its private events; a {@code Feed} carries them, at least once and in order; a {@code FeedReader}
 * hands each one to a {@code ReceivedHandler} in one transaction with its {@code Inbox} row and the feed's position,
 * which makes it effectively once. An event that cannot be read or handled stops its feed there and is shown by {@code
 * GET /feeds}: never skipped, never lost. Events travel as CloudEvents 1.0.2. The transport is a port: whatever takes
 * the place of HTTP must pass the same contract tests.
 */
@NullMarked
package org.bandtrail.eventexchange;

import org.jspecify.annotations.NullMarked;
