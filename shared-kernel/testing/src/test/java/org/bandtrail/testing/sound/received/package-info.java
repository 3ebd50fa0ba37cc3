/**
 * The door by which the service in miniature hears. It alone knows foreign contracts. Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.sound.received;

import org.jspecify.annotations.NullMarked;
