/**
 * Recalled lots: the list, recalling a lot, and one recall with what lies aside, what crews still have to bring back
 * and which trees carry it. The rules are supply-stock's. Here a depot manager sees what is left to do, and the
 * programme lead lifts the recall with a reason.
 */
@NullMarked
package org.bandtrail.frontdesk.recalls;

import org.jspecify.annotations.NullMarked;
