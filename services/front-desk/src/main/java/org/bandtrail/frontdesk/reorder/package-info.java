/**
 * What to order, where, and why: the reorder point of each item at each depot with every input of its formula. The
 * arithmetic is that of supply-stock. What the supplier promises (lead time) and how sure stock must be (service level)
 * is set here with a reason.
 */
@NullMarked
package org.bandtrail.frontdesk.reorder;

import org.jspecify.annotations.NullMarked;
