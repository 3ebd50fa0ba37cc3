/**
 * The door by which the service in miniature tells. It alone knows the own contract. Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.sound.published;

import org.jspecify.annotations.NullMarked;
