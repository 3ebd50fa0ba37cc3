/**
 * A demo season in an invented place, from the dice to the front doors. One half writes it: {@code SeasonWriter}
 * simulates four crews from April to August 2026 with a fixed seed and writes readable files; the other half loads it:
 * {@code DemoSeason} sends those files through the services' HTTP endpoints, in the order in which the depots and crews
 * would have sent them, so that nothing enters by a back door. Every command has an identity made from its row, so
 * loading twice or going on after an interruption does the work once. {@code ForestInventoryRun} does the same job on
 * an open forest inventory that nobody here wrote.
 */
@NullMarked
package org.bandtrail.local.season;

import org.jspecify.annotations.NullMarked;
