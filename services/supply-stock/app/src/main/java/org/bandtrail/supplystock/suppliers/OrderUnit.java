package org.bandtrail.supplystock.suppliers;

import java.util.Locale;
import java.util.Set;
import org.bandtrail.kernel.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A unit in which suppliers sell. On the wire it is a UN/CEFACT Recommendation 20 code (Rev. 17, 2021); a reel, a pack
 * and a box are no units there, they travel as C62 "one" with the package type of Recommendation 21 beside it.
 */
public enum OrderUnit {
    /** Metre, 1,000 mm. */
    METRE("MTR", null, LengthUnit.METRE),
    /** Yard, 914.4 mm exactly. */
    YARD("YRD", null, LengthUnit.YARD),
    /** Foot, 304.8 mm exactly; the US survey foot is not meant and has been out of use since 2022. */
    FOOT("FOT", null, LengthUnit.FOOT),
    /** One fastener. */
    PIECE("H87", null, null),
    /** A reel of the length quoted. */
    REEL("C62", "RL", null),
    /** A pack of the contents quoted. */
    PACK("C62", "PK", null),
    /** A box of the contents quoted. */
    BOX("C62", "BX", null);

    private static final Set<String> PACKAGES = Set.of("BX", "RO", "RL", "PK", "BG", "CT");
    private static final Set<String> ONE = Set.of("H87", "C62", "EA");
    private final String rec20;
    private final @Nullable String rec21;
    private final @Nullable LengthUnit length;

    OrderUnit(String rec20, @Nullable String rec21, @Nullable LengthUnit length) {
        this.rec20 = rec20;
        this.rec21 = rec21;
        this.length = length;
    }

    /** The Recommendation 20 unit code. */
    public String rec20() {
        return rec20;
    }

    /** The Recommendation 21 package code, null if the unit is no package. */
    public @Nullable String rec21() {
        return rec21;
    }

    /** Tells whether a delivery is counted in this unit; metres, yards and feet are measured instead. */
    public boolean counted() {
        return length == null;
    }

    /** The unit of length it is, null for what is counted. */
    public @Nullable LengthUnit length() {
        return length;
    }

    /** The word people use, singular. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the codes of an order, a delivery note or an invoice.
     *
     * @param unit Recommendation 20 code; C62, EA and H87 without a package are single pieces
     * @param packaging Recommendation 21 code, or null
     * @throws IllegalArgumentException naming the code and what to send instead
     */
    public static OrderUnit onWire(String unit, @Nullable String packaging) {
        String code = unit.strip().toUpperCase(Locale.ROOT);
        String inside = packaging == null ? "" : packaging.strip().toUpperCase(Locale.ROOT);
        if (inside.isEmpty() && code.startsWith("X") && PACKAGES.contains(code.substring(1))) {
            return onWire("C62", code.substring(1)); // as invoices of EN 16931 write packages, from memory
        }
        if (PACKAGES.contains(code)) {
            throw new IllegalArgumentException(
                    ("Unit [%s] is a type of package (Recommendation 21) and was deleted from the units of"
                                    + " Recommendation 20. Send unit C62 with package code %s.")
                            .formatted(unit, code));
        }
        if (code.equals("KT")) {
            throw new IllegalArgumentException(
                    "Unit [KT] means tub, barrel or pail, not a kit of parts. Order the parts one by one.");
        }
        for (OrderUnit each : values()) {
            boolean samePackage = inside.isEmpty() ? each.rec21 == null : inside.equals(each.rec21);
            boolean sameUnit = each.counted() ? ONE.contains(code) : code.equals(each.rec20);
            if (samePackage && sameUnit) {
                return each;
            }
        }
        throw new IllegalArgumentException(
                ("Unit [%s] with package code [%s] is not one goods are ordered in here. Use MTR, YRD, FOT or H87,"
                                + " or C62 with RL, PK or BX.")
                        .formatted(unit, inside));
    }
}
