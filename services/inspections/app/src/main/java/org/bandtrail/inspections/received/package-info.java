/**
 * What inspections hears from the other services. A foreign contract event becomes a command of this service; only this
 * package knows foreign contracts. A known event that cannot be read stops its feed, an unknown one is skipped and
 * counted.
 */
@NullMarked
package org.bandtrail.inspections.received;

import org.jspecify.annotations.NullMarked;
