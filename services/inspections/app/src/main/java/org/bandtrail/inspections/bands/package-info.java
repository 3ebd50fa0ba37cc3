/**
 * One band from its fitting to its teardown: what was seen on it, what was renewed, what came down. Everything here is
 * a fact of the field and is always accepted, also for a band nobody has heard of, late, out of order or twice; what
 * contradicts the books is flagged and what could not be known is told to the ledger as soon as it can be. Commands:
 * hear of a fitting, record a visit, a teardown, a bycatch outcome. The only refusal is an identity used for two
 * different things.
 */
@NullMarked
package org.bandtrail.inspections.bands;

import org.jspecify.annotations.NullMarked;
