/**
 * Imports: a tree inventory from a CSV, GeoJSON or XLSX file, looked at before anything is stored. The preview lists
 * every problem by row and column, and every doubt as a question; what it found ready is kept as shown. Storing takes
 * exactly those trees into the register and is refused when the register has changed since in a way that touches them.
 * A large import is stored by pages and goes on after a stop. Rows are numbered as a spreadsheet numbers them: the
 * header is row 1.
 */
@NullMarked
package org.bandtrail.siteinstalls.imports;

import org.jspecify.annotations.NullMarked;
