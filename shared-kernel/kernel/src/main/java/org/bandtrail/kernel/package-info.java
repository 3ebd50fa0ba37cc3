/**
 * Only what would be wrong if two services disagreed: lengths, counts, money, identities and the two times of a fact.
 * Quantities are whole numbers in the smallest unit (millimetre, piece, minor unit of a currency), because a sum of
 * rounded numbers never balances. The package depends on the JDK alone; no rule of a service lives here.
 */
@NullMarked
package org.bandtrail.kernel;

import org.jspecify.annotations.NullMarked;
