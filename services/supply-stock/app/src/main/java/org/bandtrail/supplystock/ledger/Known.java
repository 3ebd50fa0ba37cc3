package org.bandtrail.supplystock.ledger;

import org.bandtrail.supplystock.holdings.Line.Bought;

/**
 * What the receipt told about a reel or batch.
 *
 * @param kind TAPE, MESH or FASTENER
 * @param currency ISO 4217
 * @param origin place its cost came from: the supplier, or the slitting of a wide reel
 */
record Known(String material, String kind, String currency, String origin) {
    /** Before its receipt a holding is of no item and has no value. */
    static final Known NOT_YET = new Known("", "", "", "supplier:");

    static Known from(Bought bought, String origin) {
        return new Known(
                bought.material().value(), bought.kind().name(), bought.cost().currency(), origin);
    }

    boolean received() {
        return !material.isEmpty();
    }

    /** The pool of a fastener. */
    Pool.Key pool() {
        return new Pool.Key(material, currency);
    }
}
