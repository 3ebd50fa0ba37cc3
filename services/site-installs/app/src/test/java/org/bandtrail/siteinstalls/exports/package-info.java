/**
 * Tests of exports. A register of trees is written in each format and read again by the import, which must find the
 * same trees. Positions are looked at as text, because RFC 7946 says which number comes first.
 */
@NullMarked
package org.bandtrail.siteinstalls.exports;

import org.jspecify.annotations.NullMarked;
