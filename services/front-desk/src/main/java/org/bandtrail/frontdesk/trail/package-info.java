/**
 * The home page: where is every metre. A drawing shows the way from supplier to depot, crew, tree, waste bag and
 * disposal for tape, mesh and fasteners, each stretch as wide as the amount that went along it; what rests at a place
 * peels off there. The drawing is made on the server as SVG, works without script, and has a table beside it.
 */
@NullMarked
package org.bandtrail.frontdesk.trail;

import org.jspecify.annotations.NullMarked;
