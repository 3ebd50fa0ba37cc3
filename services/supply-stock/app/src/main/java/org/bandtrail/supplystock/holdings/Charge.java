package org.bandtrail.supplystock.holdings;

import org.bandtrail.kernel.SiteId;

/**
 * Cost that leaves stock for an account, or comes back to it (negative) when sound mesh goes back into use.
 *
 * @param account {@code site:<SiteId>}, {@code written-off}, {@code written-down} or {@code slit:<slitting>}
 * @param quantity millimetres or pieces that left stock; negative if they came back
 * @param minor cost in minor units of the holding's currency
 */
public record Charge(String account, long quantity, long minor) {
    /** What nobody's site pays for. */
    public static final String WRITTEN_OFF = "written-off";

    /** What stock lost in value before anybody used it (IAS 2.9, 2.34). */
    public static final String WRITTEN_DOWN = "written-down";

    /** The cost on its way from a wide reel to its strips: what the wide reel pays in, the strips are received with. */
    public static String slit(String slitting) {
        return "slit:" + slitting;
    }

    /** The account of a site. */
    public static String site(SiteId site) {
        return "site:" + site;
    }
}
