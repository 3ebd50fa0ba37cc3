package org.bandtrail.supplystock.suppliers;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One supplier as people see it.
 *
 * @param openQuotes how many quotes are not withdrawn, whether they hold today or not
 */
public record SupplierRow(String supplierId, String name, long openQuotes) {

    /** A supplier with all its quotes, the newest first. */
    public record Whole(String supplierId, String name, List<Quoted> quotes) {}

    /**
     * One quote.
     *
     * @param quote number with this supplier
     * @param unit word of the order unit
     * @param unitCode UN/CEFACT Recommendation 20 code
     * @param packageCode Recommendation 21 code, null if the unit is no package
     * @param contentMicrometres of one unit of tape or mesh, null for fasteners
     * @param contentPieces of one unit of fasteners, null for tape and mesh
     * @param validUntil last day, null until further notice
     * @param holds whether it can be ordered by today
     */
    public record Quoted(
            String supplierId,
            int quote,
            String materialCode,
            MaterialKind kind,
            String unit,
            String unitCode,
            @Nullable String packageCode,
            @Nullable Long contentMicrometres,
            @Nullable Long contentPieces,
            long packUnits,
            long minimumUnits,
            int leadTimeDays,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            String reference,
            boolean withdrawn,
            boolean holds,
            List<Price> prices) {}

    /** What one order unit costs from a quantity on. */
    public record Price(long fromUnits, Money unitPrice) {}
}
