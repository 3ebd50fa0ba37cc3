/**
 * Tests of the questions before a girth is stored. The book and the limits are the tests' own. Each question stands
 * beside a girth just within.
 */
@NullMarked
package org.bandtrail.siteinstalls.girthchecks;

import org.jspecify.annotations.NullMarked;
