/**
 * What this service tells the others. A fitted band goes into the outbox in the transaction that stores it, as a move
 * of its material from the crew to the tree. Only this package sees the own contract; what is told is fat enough that
 * a reader need not ask back.
 */
@NullMarked
package org.bandtrail.siteinstalls.published;

import org.jspecify.annotations.NullMarked;
