/**
 * The audit: states the material law on the stored data, from tables that were summed in different ways, and must read
 * zero in every line. Beside it stand the findings: places where books and field disagree, each with the reel, the
 * person and the date, until a late fact heals them or a depot manager settles them. Any user can run it at any time.
 */
@NullMarked
package org.bandtrail.supplystock.audits;

import org.jspecify.annotations.NullMarked;
