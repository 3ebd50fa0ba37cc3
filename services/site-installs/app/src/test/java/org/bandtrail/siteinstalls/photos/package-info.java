/**
 * Tests of photos. Pictures are drawn by the tests themselves. Files that are no pictures, that lie about their size or
 * that are turned are sent on purpose.
 */
@NullMarked
package org.bandtrail.siteinstalls.photos;

import org.jspecify.annotations.NullMarked;
