/**
 * How far a service has read the others, for people and for monitoring: position, what is still ahead, and what holds a
 * feed up. Reads the tables that the readers write. A person may resume a stopped feed here; nothing is ever skipped.
 */
@NullMarked
package org.bandtrail.eventexchange.overview;

import org.jspecify.annotations.NullMarked;
