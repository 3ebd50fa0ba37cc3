/**
 * Exports: the register of trees for other programs, as CSV with the field names open tree registers share, as GeoJSON
 * (RFC 7946) and as a spreadsheet (XLSX). They are written while the register is read, some thousand trees at a time,
 * so the size of the register does not matter. What is exported can be imported again and says the same.
 */
@NullMarked
package org.bandtrail.siteinstalls.exports;

import org.jspecify.annotations.NullMarked;
