/**
 * Cut plans: which piece for which tree comes off which reel of a depot, and how good that is. {@code DrawPlan} keeps
 * what the planner of {@link org.bandtrail.siteinstalls.cuttingstock} found, with its bound; it is refused when the
 * numbers do not add up, so no stored plan uses a millimetre twice or cuts a piece from two reels. {@code AgreePlan}
 * binds the reels until the plan is handed over as a kit or dropped: meanwhile other plans see only what it leaves.
 * Nothing here moves material; that happens when a kit goes out and when a crew fits.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutplans;

import org.jspecify.annotations.NullMarked;
