package org.bandtrail.siteinstalls.guards;

import org.bandtrail.kernel.Length;

/**
 * What a guard has to be.
 *
 * @param leastStandOff how far it stands off at least
 * @param widestOpening how wide its mesh opens at most
 * @param wider by how much it is wider than the tape at least
 * @param closedBelow whether it has to be closed below
 */
public record GuardRule(Length leastStandOff, Length widestOpening, Length wider, boolean closedBelow) {}
