/**
 * Tests of {@code handouts}. Rules are tested by given, when and then without any framework; what needs the
 * database runs the service on a real PostgreSQL. A refusal stands beside each success, at the boundary.
 */
@NullMarked
package org.bandtrail.supplystock.handouts;

import org.jspecify.annotations.NullMarked;
