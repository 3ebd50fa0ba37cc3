/**
 * Animals found on bands that are not the pest: the list, what became of each, and what to do when one is stuck. An
 * entry stays open until somebody tells its outcome, and an open one makes its band due at once. The cautions are help
 * for the first minutes; local law, permits and the licensed rehabilitator come before them.
 */
@NullMarked
package org.bandtrail.inspections.bycatch;

import org.jspecify.annotations.NullMarked;
