package org.bandtrail.supplystock.slittings;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;

/**
 * One slitting as people see it. Lengths and widths are millimetres, areas square millimetres.
 *
 * @param areaInMm2 length times width of what went in
 * @param areaOutMm2 length times widths of strips and trim; the same, always
 */
public record SlittingRow(
        String slittingId,
        String reelId,
        String materialCode,
        long lengthMm,
        long widthMm,
        long trimMm,
        Money cost,
        long areaInMm2,
        long areaOutMm2,
        Instant slitAt,
        String by,
        List<Made> strips) {

    /** A strip with its share of the cost. */
    public record Made(String reelId, String materialCode, long widthMm, Money cost) {}
}
