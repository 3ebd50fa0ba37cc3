/**
 * Kits at the counter: from a pasted or scanned tree list to what is collected from which bin, handed out, signed for,
 * measured when it comes back, and settled. And who has what, at any moment.
 *
 * <p>The person who takes a kit signs with their own sign-in, on their own screen or beside the counter's; the one at
 * the counter cannot sign for them.
 */
@NullMarked
package org.bandtrail.frontdesk.kits;

import org.jspecify.annotations.NullMarked;
