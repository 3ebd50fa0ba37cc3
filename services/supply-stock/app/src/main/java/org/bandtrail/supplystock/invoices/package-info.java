/**
 * An invoice or credit note as the programme keeps it: what the supplier wrote, which order lines its lines bill, what
 * is held and why, who approved it for payment. Nothing the supplier wrote is changed; what people decide stands beside
 * it. The same paper (supplier, number, amount) comes in once, because its identity is made from just these.
 *
 * <p>Wishes: register, link a line to an order line or say what else it is, hold and settle, approve (two persons above
 * a sum), spread a charge, withdraw what was registered by mistake.
 */
@NullMarked
package org.bandtrail.supplystock.invoices;

import org.jspecify.annotations.NullMarked;
