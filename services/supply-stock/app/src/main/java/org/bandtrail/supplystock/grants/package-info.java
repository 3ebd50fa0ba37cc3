/**
 * Grants: where the money comes from, with its currency, its amount and the days it is good for. Wishes: register a grant,
 * change its terms with a reason; the currency stays for ever, because spend in it is added up. What a grant pays is
 * said by the shares of each site, see {@link org.bandtrail.supplystock.siteshares}.
 */
@NullMarked
package org.bandtrail.supplystock.grants;

import org.jspecify.annotations.NullMarked;
