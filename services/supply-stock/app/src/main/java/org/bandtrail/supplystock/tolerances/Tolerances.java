package org.bandtrail.supplystock.tolerances;

/**
 * What may differ without a question. Of a share and an absolute limit the smaller holds, so that neither a small nor
 * a large line slips through.
 *
 * @param quantityPermille of what was received, 0 to 1000
 * @param lengthMm of tape or mesh, 0 or more
 * @param pieces of fasteners, 0 or more
 * @param pricePermille of the amount by the order's price, 0 to 1000
 * @param priceMinor minor units of the invoice's currency, 0 or more
 * @param secondPersonFromMinor payable sum in minor units from which a second person approves, 0 or more
 */
public record Tolerances(
        long quantityPermille,
        long lengthMm,
        long pieces,
        long pricePermille,
        long priceMinor,
        long secondPersonFromMinor) {
    private static final long WHOLE = 1_000;
    /** Nothing may differ, and two persons approve everything. */
    public static final Tolerances NONE = new Tolerances(0, 0, 0, 0, 0, 0);

    /**
     * Refuses what is no tolerance.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Tolerances {
        if (quantityPermille < 0 || quantityPermille > WHOLE || pricePermille < 0 || pricePermille > WHOLE) {
            throw new IllegalArgumentException(
                    "Shares [%d] of the quantity and [%d] of the price are per mille: 0 to 1000."
                            .formatted(quantityPermille, pricePermille));
        }
        if (lengthMm < 0 || pieces < 0 || priceMinor < 0 || secondPersonFromMinor < 0) {
            throw new IllegalArgumentException("Limits [%d mm], [%d pieces], [%d] and [%d] minor units are 0 or more."
                    .formatted(lengthMm, pieces, priceMinor, secondPersonFromMinor));
        }
    }

    /** How many millimetres more than received may be billed. */
    public long allowedMm(long receivedMm) {
        return Math.min(share(receivedMm, quantityPermille), lengthMm);
    }

    /** How many pieces more than received may be billed. */
    public long allowedPieces(long received) {
        return Math.min(share(received, quantityPermille), pieces);
    }

    /** By how many minor units an amount may differ from the order's. */
    public long allowedMinor(long expectedMinor) {
        return Math.min(share(Math.abs(expectedMinor), pricePermille), priceMinor);
    }

    /** Rounded down: a tolerance is never stretched. */
    private static long share(long whole, long permille) {
        return Math.multiplyExact(Math.max(0, whole), permille) / WHOLE;
    }
}
