/**
 * The journal of a month on the organisation's own accounts, and the mapping of ours to them. The files are those that
 * supply-stock writes, passed on byte for byte. Whether a journal may leave the house is decided there.
 */
@NullMarked
package org.bandtrail.frontdesk.journal;

import org.jspecify.annotations.NullMarked;
