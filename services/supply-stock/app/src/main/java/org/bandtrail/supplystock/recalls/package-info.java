/**
 * A recall takes a supplier's lot out of use everywhere at once, because something is wrong with it: adhesive that runs,
 * mesh that splits. All that lies in depots and bins goes aside in the same work; what is with crews, in vehicles or on
 * the way is listed to be brought back; the trees that carry it are listed for the programme lead. While the recall is
 * open nothing of the lot is handed out or released, and what comes into a depot later (received, returned, arrived, slit
 * from it) goes aside as well: that rule is in one place, {@link org.bandtrail.supplystock.recalls.RecallDesk}.
 *
 * <p>Two suppliers may print the same lot, so a recall is of a supplier's lot: what the other one brought stays in use. If
 * only one delivered something under the lot, nobody has to name it.
 *
 * <p>Wishes: recall a lot (refused if it is recalled already, or if it is not clear whose lot it is), lift a recall (refused if it is not open). Both need a
 * reason. Lifting releases what this recall set aside, as far as it is still there; what was set aside for another reason
 * stays.
 */
@NullMarked
package org.bandtrail.supplystock.recalls;

import org.jspecify.annotations.NullMarked;
