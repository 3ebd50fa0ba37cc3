/**
 * Invoices at the finance desk: the inbox of what waits, a paper on its way in, one invoice beside order and delivery.
 * Whether a line matches and what an approval does is for supply-stock to say; here it is put in words. A paper travels
 * in the form from the preview to being kept, so that what was shown is what is stored.
 */
@NullMarked
package org.bandtrail.frontdesk.invoices;

import org.jspecify.annotations.NullMarked;
