/**
 * The door through which requests enter a service: who may come in ({@code ServiceKeyFilter}), for whom
 * ({@code ActingPerson}), and what is answered when something is wrong ({@code ProblemAdvice}, RFC 9457). All services
 * share it, so that a refusal looks the same wherever it happens. No rule of a service lives here.
 */
@NullMarked
package org.bandtrail.eventexchange.entry;

import org.jspecify.annotations.NullMarked;
