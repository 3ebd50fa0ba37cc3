package org.bandtrail.supplystock.billings;

/**
 * What was billed against one line of a purchase up to now, credits subtracted.
 *
 * @param quantity millimetres or pieces
 * @param netMinor minor units
 * @param atReceiptMinor the part of the receipts' cost that it stands for, minor units
 */
public record BilledSoFar(long quantity, long netMinor, long atReceiptMinor) {
    /** Nothing was billed yet. */
    public static final BilledSoFar NOTHING = new BilledSoFar(0, 0, 0);

    /** With one more line. */
    BilledSoFar and(BilledLine line) {
        return new BilledSoFar(
                quantity + line.quantity(),
                netMinor + line.net().minor(),
                atReceiptMinor + line.atReceipt().minor());
    }
}
