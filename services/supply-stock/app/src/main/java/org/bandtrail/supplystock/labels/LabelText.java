package org.bandtrail.supplystock.labels;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.supplystock.deliveries.LotRow;
import org.jspecify.annotations.Nullable;

/**
 * What stands on one label.
 *
 * @param number the reel's or batch's identity, in large letters and in the QR code
 * @param lines smaller lines below, the most wanted first; what does not fit is left out from the end
 */
public record LabelText(String number, List<String> lines) {
    private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    /**
     * The text of a delivered reel or batch.
     *
     * @param itemName the name people use, null if the item is not registered
     * @param itemWidthMm width of the item, used if nobody measured this reel
     */
    static LabelText of(LotRow row, @Nullable String itemName, @Nullable Long itemWidthMm) {
        List<String> lines = new ArrayList<>();
        lines.add(itemName == null ? row.materialCode() : itemName);
        lines.add(row.holding().equals("reel") ? length(row.quantity()) : row.quantity() + " pieces");
        Long width = row.widthMm() == null ? itemWidthMm : row.widthMm();
        if (width != null) {
            lines.add("width " + width + " mm / " + divided(width, MM_PER_INCH, 2) + " in");
        }
        addLot(lines, row.lot(), row.expiresOn());
        lines.add(row.materialCode() + ", delivered " + row.deliveredOn());
        return new LabelText(row.id(), List.copyOf(lines));
    }

    private static void addLot(List<String> lines, @Nullable String lot, @Nullable LocalDate expires) {
        if (lot != null) {
            lines.add("lot " + lot);
        }
        if (expires != null) {
            lines.add("use by " + expires);
        }
    }

    private static String length(long mm) {
        return String.format(
                Locale.ROOT, "%s m / %s ft", divided(mm, BigDecimal.valueOf(1_000), 2), divided(mm, MM_PER_FOOT, 1));
    }

    private static String divided(long mm, BigDecimal unit, int digits) {
        return BigDecimal.valueOf(mm).divide(unit, digits, RoundingMode.HALF_UP).toPlainString();
    }
}
