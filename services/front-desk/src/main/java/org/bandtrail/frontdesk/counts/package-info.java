/**
 * Pages about counting: what is due by the plan, opening a count, entering figures blind by scanning a label and
 * then a length or pieces, and the review with reasons and approval. While a count is counted the service gives no
 * figure of the books, so none can be shown here. The rules are those of supply-stock; this page only passes wishes
 * on.
 */
@NullMarked
package org.bandtrail.frontdesk.counts;

import org.jspecify.annotations.NullMarked;
