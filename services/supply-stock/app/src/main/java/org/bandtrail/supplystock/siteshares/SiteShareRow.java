package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import java.util.List;

/**
 * Who pays for a site from a month on.
 *
 * @param shares in thousandths that add up to 1000; empty if no grant pays
 */
public record SiteShareRow(String siteId, YearMonth from, List<GrantShare> shares) {}
