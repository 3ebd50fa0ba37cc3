/**
 * What supply stock tells the others: as the samples say, in the transaction of the private event, and never twice.
 * What was told of the depots must add up to what lies there. What happened before the service learnt to tell it is
 * told afterwards from its own history.
 */
@NullMarked
package org.bandtrail.supplystock.published;

import org.jspecify.annotations.NullMarked;
