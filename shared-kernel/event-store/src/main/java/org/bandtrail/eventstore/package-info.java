/**
 * Axon, JDBC and PostgreSQL, wired once and kept here, so that a feature sees plain records and could be moved to
 * another store. A service imports {@link org.bandtrail.eventstore.EventStoreWiring}, names its aggregates by
 * {@link org.bandtrail.eventstore.AggregateOf} and its read models by {@link org.bandtrail.eventstore.Projection}.
 * One transaction is one {@link org.bandtrail.eventstore.Work}: events, inbox, outbox and receipts commit together.
 */
@NullMarked
package org.bandtrail.eventstore;

import org.jspecify.annotations.NullMarked;
