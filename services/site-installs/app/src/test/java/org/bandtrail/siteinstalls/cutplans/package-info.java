/**
 * Tests of cut plans: the rules of the aggregate, and the whole way over HTTP on PostgreSQL with reels told by
 * supply-stock. That a plan is good is the planner's affair and tested there; here it is kept as found, adds up, and
 * binds its reels. Trees and reels are invented.
 */
@NullMarked
package org.bandtrail.siteinstalls.cutplans;

import org.jspecify.annotations.NullMarked;
