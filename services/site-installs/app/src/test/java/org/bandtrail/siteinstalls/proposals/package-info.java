/**
 * Tests of proposals. A proposal is compared with a calculation by hand. Cautions are tested at the boundary.
 */
@NullMarked
package org.bandtrail.siteinstalls.proposals;

import org.jspecify.annotations.NullMarked;
