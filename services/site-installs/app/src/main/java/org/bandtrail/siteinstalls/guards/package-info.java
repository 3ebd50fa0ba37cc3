/**
 * Guards: whether a sheet of mesh keeps wildlife off the tape of a band. Pure geometry of a round trunk and the values
 * of a policy; what is wrong is said in plain words with the figure and the figure that is asked for. The shape and
 * size of openings that let animals through are data with their source ({@code defaults/guard-openings.json}). Nothing
 * is refused here: a crew that hung a bad guard needs a question, and the office needs the answer.
 */
@NullMarked
package org.bandtrail.siteinstalls.guards;

import org.jspecify.annotations.NullMarked;
