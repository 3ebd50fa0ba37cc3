/**
 * The smallest service that tells and hears, to test the wiring with: it keeps notes, publishes each one, and copies
 * the notes of the service {@code other-notes}. It has one aggregate, one publisher, one handler and one controller.
 * No rule of the trade lives here.
 */
@NullMarked
package org.bandtrail.eventexchange.notes;

import org.jspecify.annotations.NullMarked;
