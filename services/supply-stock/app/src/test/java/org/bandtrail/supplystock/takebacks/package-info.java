/**
 * Tests of {@code takebacks}. Which last move still has a way back is tested without any framework, at the boundary of
 * time; that the opposite move is really made, and refused once somebody else moved the reel, runs the service on a real
 * PostgreSQL. A refusal stands beside each success.
 */
@NullMarked
package org.bandtrail.supplystock.takebacks;

import org.jspecify.annotations.NullMarked;
