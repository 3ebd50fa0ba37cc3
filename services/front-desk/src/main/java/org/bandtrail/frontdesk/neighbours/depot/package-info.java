/**
 * The depot: stock, purchases and deliveries, kits, counts, moves and traces, as supply-stock tells them. One client for
 * each area asks and passes commands on; beside it stand the records it answers with. Lengths are whole millimetres,
 * fasteners whole pieces.
 */
@NullMarked
@NamedInterface("depot")
package org.bandtrail.frontdesk.neighbours.depot;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
