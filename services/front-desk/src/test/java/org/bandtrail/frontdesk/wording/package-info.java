/**
 * Tests of the words and figures people read. Unit conversions are checked against NIST Special Publication 811. What a
 * spreadsheet would run as a formula is checked against the list of OWASP.
 */
@NullMarked
package org.bandtrail.frontdesk.wording;

import org.jspecify.annotations.NullMarked;
