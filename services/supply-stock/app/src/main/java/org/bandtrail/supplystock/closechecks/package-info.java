/**
 * What must be so before a month is closed: books and field agree, every invoice has its match, every kit has come back,
 * everything from the field was heard, the audit reads zero, the trial holds. Each check is a bean that looks at what other
 * features keep and names each open thing, so that a signature holds for exactly these. A check never stops anybody from
 * working; it only keeps a month from closing unsigned.
 */
@NullMarked
package org.bandtrail.supplystock.closechecks;

import org.jspecify.annotations.NullMarked;
