/**
 * Host checks: is this the tree the pest prefers, or one that looks like it? A short key asks one question after the
 * other; {@link org.bandtrail.siteinstalls.hostchecks.HostKey} turns the answers into a verdict with a confidence, by a
 * rule that is written there. The verdict is stored with the answers and the version of the key, so that a later and
 * better key can be told from an older one. Nothing is refused: a band on a tree that nobody checked, or that is no
 * host, is a finding people see. {@link org.bandtrail.siteinstalls.hostchecks.HostChecks} lists those as they stand
 * now, so that a finding goes when the check is done.
 */
@NullMarked
package org.bandtrail.siteinstalls.hostchecks;

import org.jspecify.annotations.NullMarked;
