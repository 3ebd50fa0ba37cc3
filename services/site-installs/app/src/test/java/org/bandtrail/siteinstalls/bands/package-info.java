/**
 * Tests of bands. Facts are never refused, so what is tested is what is flagged, and that it is not flagged one
 * millimetre beside. The law over random histories says that the order of arrival does not matter.
 */
@NullMarked
package org.bandtrail.siteinstalls.bands;

import org.jspecify.annotations.NullMarked;
