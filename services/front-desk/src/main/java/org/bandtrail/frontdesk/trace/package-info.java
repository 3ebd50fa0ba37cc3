/**
 * The trace page: scan or type a lot, reel, tree, waste bag or load, and see the way of the material. From a lot or
 * reel the way leads on to trees, bags and loads; from a tree, bag or load it leads back to lot, delivery, order and
 * invoice. The drawing is made on the server as SVG and has tables beside it; the traces themselves come from
 * supply-stock.
 */
@NullMarked
package org.bandtrail.frontdesk.trace;

import org.jspecify.annotations.NullMarked;
