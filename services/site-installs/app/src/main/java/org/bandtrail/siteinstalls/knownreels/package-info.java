/**
 * Reels this service has heard of from supply-stock: what each is made of, how wide it is, how wide a mesh opens. It
 * is a copy for checking a fitted band against, never the ledger; how much is left on a reel only supply-stock knows.
 * A reel nobody told us about may still be used by a crew, the band is then flagged. The rows follow from the feed
 * alone and are written in the transaction of the inbox.
 */
@NullMarked
package org.bandtrail.siteinstalls.knownreels;

import org.jspecify.annotations.NullMarked;
