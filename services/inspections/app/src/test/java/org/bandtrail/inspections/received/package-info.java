/**
 * Tests of what inspections hears. Every sample in the publishers' contracts is translated. What the translation gives
 * is compared to what the sample says.
 */
@NullMarked
package org.bandtrail.inspections.received;

import org.jspecify.annotations.NullMarked;
