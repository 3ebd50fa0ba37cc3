/**
 * The inside of a neighbour, for a counter-example that looks at it. It keeps the rules itself.
 * Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.broken.neighbour.bands;

import org.jspecify.annotations.NullMarked;
