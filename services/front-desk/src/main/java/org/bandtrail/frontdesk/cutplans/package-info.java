/**
 * Cut plans at the desk: which piece comes off which reel, drawn to scale. A plan is worked out from a work plan or a
 * list of trees, looked at, agreed, handed over as a kit, or dropped with a reason. Nothing is decided here; the plan,
 * its bound and what is missing come from site-installs.
 */
@NullMarked
package org.bandtrail.frontdesk.cutplans;

import org.jspecify.annotations.NullMarked;
