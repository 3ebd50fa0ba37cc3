/**
 * Tests of {@code variances}. The formula is held against the worked example of the check values (section E3); what is read
 * from the books is checked over HTTP on a real PostgreSQL. Figures without a source beside them are computed by hand there.
 */
@NullMarked
package org.bandtrail.supplystock.variances;

import org.jspecify.annotations.NullMarked;
