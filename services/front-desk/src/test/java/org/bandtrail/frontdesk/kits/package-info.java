/**
 * Tests of the parts of kits that decide what a page says: reading a pasted or scanned tree list, and drawing a
 * settlement. Pages and forms are tested with the others, against recorded services. Nothing here needs the
 * application.
 */
@NullMarked
package org.bandtrail.frontdesk.kits;

import org.jspecify.annotations.NullMarked;
