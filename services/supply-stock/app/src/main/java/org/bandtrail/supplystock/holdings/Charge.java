package org.bandtrail.supplystock.holdings;

import org.bandtrail.kernel.SiteId;

/**
 * Cost that leaves stock for an account, or comes back to it (negative) when sound mesh goes back into use.
 *
 * @param account {@code site:<SiteId>} or {@code written-off}
 * @param quantity millimetres or pieces that left stock; negative if they came back
 * @param minor cost in minor units of the holding's currency
 */
public record Charge(String account, long quantity, long minor) {
    /** What nobody's site pays for. */
    public static final String WRITTEN_OFF = "written-off";

    /** The account of a site. */
    public static String site(SiteId site) {
        return "site:" + site;
    }
}
