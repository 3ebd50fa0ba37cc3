package org.bandtrail.supplystock.purchases;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.jspecify.annotations.Nullable;

/**
 * One order as people see it.
 *
 * @param state ordered, partly received, received, closed or cancelled
 * @param reason why it was put off, closed or cancelled last, or null
 * @param total price of all lines
 * @param committed price of what is still to come
 */
public record PurchaseRow(
        String purchaseId,
        String supplierId,
        String supplierName,
        String depotId,
        String state,
        LocalDate expectedOn,
        Instant orderedAt,
        String personId,
        @Nullable String reason,
        Money total,
        Money committed) {

    /** An order with its lines. */
    public record Whole(PurchaseRow purchase, List<Line> lines) {}

    /**
     * One line. Quantities are millimetres of tape and mesh, pieces of fasteners.
     *
     * @param unit word of the order unit
     * @param unitCode UN/CEFACT Recommendation 20 code
     * @param packageCode Recommendation 21 code, null if the unit is no package
     * @param content of one unit: micrometres of tape and mesh, pieces of fasteners
     * @param units order units ordered
     * @param ordered the same in millimetres or pieces
     * @param unitPrice of one order unit
     * @param price of the whole line
     * @param quote number of the supplier's quote, null if the price was given by hand
     * @param siteId site it is meant for, or null
     * @param grant that is to pay, or null
     * @param counted whether deliveries are counted in the unit; metres, yards and feet are measured
     * @param receivedUnits order units counted on arrival, less those sent back; 0 where the unit is a length
     * @param received measured or counted on arrival, less what was sent back
     * @param remaining still to come; 0 once closed or cancelled
     * @param committed price of the remaining
     */
    public record Line(
            String purchaseId,
            int line,
            String materialCode,
            MaterialKind kind,
            String unit,
            String unitCode,
            @Nullable String packageCode,
            long content,
            long units,
            long ordered,
            Money unitPrice,
            Money price,
            @Nullable Integer quote,
            @Nullable String siteId,
            @Nullable String grant,
            boolean counted,
            long receivedUnits,
            long received,
            long remaining,
            Money committed) {

        /** The line as it was ordered, for the rules. */
        public OrderedLine asOrdered() {
            return new OrderedLine(
                    line,
                    new MaterialCode(materialCode),
                    kind,
                    new Packing(OrderUnit.onWire(unitCode, packageCode), content),
                    units,
                    unitPrice.minor(),
                    quote,
                    siteId == null ? null : new SiteId(siteId),
                    grant);
        }
    }
}
