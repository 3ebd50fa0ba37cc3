/**
 * It breaks one house rule on purpose. The test of the house rules shows that the rule fails on it.
 * Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.broken.nested.reels;

import org.jspecify.annotations.NullMarked;
