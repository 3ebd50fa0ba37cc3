package org.bandtrail.supplystock.siteshares;

import org.bandtrail.supplystock.grants.GrantId;

/**
 * The part of a site's cost that one grant pays.
 *
 * @param grantId the grant
 * @param permille thousandths, 1 to 1000
 */
public record GrantShare(GrantId grantId, int permille) {}
