package org.bandtrail.frontdesk.purchasing;

import java.util.Map;

/** The units people choose from, as the codes of UN/CEFACT Recommendations 20 and 21 that travel. */
final class OrderUnits {
    private static final Map<String, String> PACKAGES = Map.of("reel", "RL", "pack", "PK", "box", "BX");
    private static final Map<String, String> UNITS =
            Map.of("piece", "H87", "metre", "MTR", "yard", "YRD", "foot", "FOT");

    private OrderUnits() {}

    /** The codes of a chosen unit; a unit nobody knows goes as it is, and the service says what is wrong. */
    static Map<String, Object> codes(String unit) {
        String packaging = PACKAGES.get(unit);
        return packaging == null
                ? Map.of("unitCode", UNITS.getOrDefault(unit, unit))
                : Map.of("unitCode", "C62", "packageCode", packaging);
    }
}
