/**
 * Tests of {@code holds}: the rules by given, when and then, and many writers at once on a real PostgreSQL. What is
 * counted at the end is read from the stored events and not from a read model. Nothing here is timed.
 */
@NullMarked
package org.bandtrail.supplystock.holds;

import org.jspecify.annotations.NullMarked;
