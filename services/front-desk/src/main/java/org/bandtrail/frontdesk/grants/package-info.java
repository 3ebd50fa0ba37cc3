/**
 * Where the money comes from: grants with what was spent of each, and who pays for which site in which shares.
 * Shares are typed in percent and kept in thousandths, so that they can add up exactly. Whether they do is for
 * supply-stock to say.
 */
@NullMarked
package org.bandtrail.frontdesk.grants;

import org.jspecify.annotations.NullMarked;
