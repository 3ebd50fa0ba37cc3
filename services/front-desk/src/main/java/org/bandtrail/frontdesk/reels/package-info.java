/**
 * Pages about reels and batches of fasteners: the list, one with its own small trail and history, and the form with
 * which the depot receives a new one. The page of a place shows what is there now. Everything comes from supply-stock,
 * which decides what may be received.
 */
@NullMarked
package org.bandtrail.frontdesk.reels;

import org.jspecify.annotations.NullMarked;
