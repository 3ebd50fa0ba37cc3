/**
 * Stand-ins for annotations of the event store, for tests of the test libraries only. House rules and golden files find
 * the real ones by name, because the event store depends on this module and not the other way round. If a real name
 * changes, the tests of the event store show it.
 */
@NullMarked
package org.bandtrail.eventstore;

import org.jspecify.annotations.NullMarked;
