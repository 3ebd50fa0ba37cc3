/**
 * Stock at a depot that must not be used: delivered and not accepted yet, damaged, doubtful, or of a lot that is looked
 * into. Setting aside and releasing are moves with a reason; what is set aside counts as stock and is never handed out.
 * The list says what stands aside where, since when and why.
 */
@NullMarked
package org.bandtrail.supplystock.setasides;

import org.jspecify.annotations.NullMarked;
