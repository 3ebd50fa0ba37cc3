/**
 * Making plans: what is refused and why, what only deserves a thought, whether stock suffices, and the order of the
 * walk against published tours. Plans are made over HTTP as the front desk makes them, on a real database. The walk is
 * compared with tours whose shortest length is known.
 */
@NullMarked
package org.bandtrail.siteinstalls.planmaking;

import org.jspecify.annotations.NullMarked;
