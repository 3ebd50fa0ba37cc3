/**
 * Can this month close? The checks in plain words, each with a place to settle it or a reason to sign it, then the
 * close, and the way back by two people. The rules are those of supply-stock; what it refuses is shown in its own
 * words. Everybody may read, finance and the lead may sign, close and reopen.
 */
@NullMarked
package org.bandtrail.frontdesk.months;

import org.jspecify.annotations.NullMarked;
