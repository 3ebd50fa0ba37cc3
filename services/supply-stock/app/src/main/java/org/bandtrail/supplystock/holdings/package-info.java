/**
 * The material law, for reels and batches alike: material only moves between places, so what was received is what lies
 * in depots, with crews, on trees, in waste bags, disposed, written off or reported missing. A balance may be negative:
 * then the field took more from a place than the books knew there, which is a discrepancy and heals when the late fact
 * comes. Cost follows the material by specific identification (IAS 2, paragraphs 23 and 24) and never leaks a cent.
 */
@NullMarked
package org.bandtrail.supplystock.holdings;

import org.jspecify.annotations.NullMarked;
