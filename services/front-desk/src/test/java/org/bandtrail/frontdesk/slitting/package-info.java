/**
 * Tests of the drawing of a wide reel with its strips. Shapes are compared as numbers in pixels, worked out by hand
 * from the scale of the drawing. The pages around it are tested with the other pages.
 */
@NullMarked
package org.bandtrail.frontdesk.slitting;

import org.jspecify.annotations.NullMarked;
