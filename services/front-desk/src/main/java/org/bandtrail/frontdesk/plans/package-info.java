/**
 * Work plans at the desk: the board of days and crews, one plan with its walk, and making one from a site's trees.
 * Every plan says at once whether the depot's stock suffices. From a plan it is one step to the kit that its crew
 * carries out.
 */
@NullMarked
package org.bandtrail.frontdesk.plans;

import org.jspecify.annotations.NullMarked;
