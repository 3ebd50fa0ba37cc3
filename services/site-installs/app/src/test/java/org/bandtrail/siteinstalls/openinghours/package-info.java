/**
 * Tests of opening hours at both ends of a row. Exceptions stand against the rows of their weekday. Rows that
 * contradict themselves are refused by name.
 */
@NullMarked
package org.bandtrail.siteinstalls.openinghours;

import org.jspecify.annotations.NullMarked;
