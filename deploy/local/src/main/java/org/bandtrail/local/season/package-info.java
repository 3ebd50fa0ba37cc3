/**
 * The demo season, loaded through the front doors. It reads the files of {@code demo-data} and sends them to the
 * services over HTTP, exactly as people and phones would have sent them, so loading it also proves the services.
 * Every command has a fixed id, which makes the loading resumable: what was done before a stop is not done again.
 */
@NullMarked
package org.bandtrail.local.season;

import org.jspecify.annotations.NullMarked;
