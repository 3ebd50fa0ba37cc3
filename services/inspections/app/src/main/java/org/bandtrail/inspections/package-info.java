/**
 * Inspections: somebody looks at bands, counts what was caught, cares for wildlife, renews pieces, takes bands down and
 * sends the waste away. Everything told here is a fact of the field and is kept; what pieces went where is told to the
 * ledger of supply-stock. The two doors to other services are {@code published} and {@code received}.
 */
@NullMarked
package org.bandtrail.inspections;

import org.jspecify.annotations.NullMarked;
