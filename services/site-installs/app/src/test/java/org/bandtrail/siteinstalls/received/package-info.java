/**
 * Tests of what is heard. Every sample in a publisher's jar is translated, so that a change of the contract shows here
 * first. Samples of events that are of no use here must be passed over by name.
 */
@NullMarked
package org.bandtrail.siteinstalls.received;

import org.jspecify.annotations.NullMarked;
