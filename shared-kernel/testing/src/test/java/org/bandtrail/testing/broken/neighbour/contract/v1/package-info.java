/**
 * The contract of a neighbour, for counter-examples that look at it. It keeps the rules itself.
 * Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.broken.neighbour.contract.v1;

import org.jspecify.annotations.NullMarked;
