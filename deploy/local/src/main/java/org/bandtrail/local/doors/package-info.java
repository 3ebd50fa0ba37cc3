/**
 * The services' HTTP doors as somebody outside uses them who holds the key: ask, send, upload, wait until one service has
 * heard another. The demo season, the office of the demo and the forest inventory go in here, never into a database.
 * The same row of a file always gives the same command identity, so sending a file twice does nothing twice.
 */
@NullMarked
package org.bandtrail.local.doors;

import org.jspecify.annotations.NullMarked;
