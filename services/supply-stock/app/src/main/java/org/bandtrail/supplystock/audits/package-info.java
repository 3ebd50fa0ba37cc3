/**
 * The audit: states the material law on the stored data, one side from the single moves, the other from the balances,
 * and must read zero in every line. The sums of both sides are kept as the moves come, so it is quick however many moves
 * there are; on demand every row is counted again and each kept sum is compared with what was counted.
 *
 * <p>Beside it stand the findings: places where books and field disagree, each with the reel, the person and the date,
 * until a late fact heals them or a depot manager settles them. Any user can run it at any time.
 */
@NullMarked
package org.bandtrail.supplystock.audits;

import org.jspecify.annotations.NullMarked;
