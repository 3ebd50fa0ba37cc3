/**
 * A service in miniature that keeps all house rules. The test of the house rules shows that they hold on it and that
 * each of them found something to check. Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.sound;

import org.jspecify.annotations.NullMarked;
