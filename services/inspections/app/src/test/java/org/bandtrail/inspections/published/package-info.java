/**
 * Tests of what inspections tells the others. What a reader of the ledger needs is checked on the published record, not
 * on the private event. Samples of every version lie in the contract.
 */
@NullMarked
package org.bandtrail.inspections.published;

import org.jspecify.annotations.NullMarked;
