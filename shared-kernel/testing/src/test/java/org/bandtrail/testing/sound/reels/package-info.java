/**
 * A feature in miniature: a command, an event, a decision and its shell. It keeps all house rules.
 * Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.sound.reels;

import org.jspecify.annotations.NullMarked;
