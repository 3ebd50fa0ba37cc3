/**
 * Tests of imports. One runs on a real inventory of 533 trees whose figures were counted by another program. The others
 * are small files with one thing wrong each.
 */
@NullMarked
package org.bandtrail.siteinstalls.imports;

import org.jspecify.annotations.NullMarked;
