package org.bandtrail.supplystock.spend;

import java.time.YearMonth;
import org.bandtrail.kernel.MaterialKind;

/**
 * The smallest sum that is split between grants: what one item cost one site in one month in one way.
 *
 * @param scrapped whether it was spoilt on the job
 * @param quantity millimetres or pieces
 * @param minor minor units of the currency
 */
record SpendCell(
        String siteId,
        YearMonth month,
        String material,
        MaterialKind kind,
        String currency,
        boolean scrapped,
        long quantity,
        long minor) {

    /** The sums of a row that holds only this share of the cell. */
    SpendRow.Sums share(long shareOfQuantity, long shareOfMinor) {
        boolean tape = kind == MaterialKind.TAPE;
        boolean mesh = kind == MaterialKind.MESH;
        boolean fastener = kind == MaterialKind.FASTENER;
        return new SpendRow.Sums(
                currency,
                tape ? shareOfMinor : 0,
                mesh ? shareOfMinor : 0,
                fastener ? shareOfMinor : 0,
                scrapped ? shareOfMinor : 0,
                0,
                0,
                tape ? shareOfQuantity : 0,
                mesh ? shareOfQuantity : 0,
                fastener ? shareOfQuantity : 0);
    }
}
