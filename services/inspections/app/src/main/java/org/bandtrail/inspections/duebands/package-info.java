/**
 * When the next look at each band is due, and why. Due is the earliest of several reasons (interval, load at the last
 * look, guard failure, open bycatch, an unanswered look, the day it must come off), each with the number it comes from.
 * The numbers are a visit policy: versioned data with a source and a reason, because they differ by place, pest and
 * year.
 */
@NullMarked
package org.bandtrail.inspections.duebands;

import org.jspecify.annotations.NullMarked;
