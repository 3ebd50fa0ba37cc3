/**
 * Tests of {@code custody}. Settlements are worked out from the events that the rules of a reel or batch decide, so
 * that what is settled here is what the books hold. The law is checked over random histories of
 * several kits and people.
 */
@NullMarked
package org.bandtrail.supplystock.custody;

import org.jspecify.annotations.NullMarked;
