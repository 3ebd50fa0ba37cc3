/**
 * What supply stock hears from the other services. Each class is one foreign service; its events become commands inside
 * the reader's transaction, so a fact is in the books exactly once. Only this package sees a foreign contract. Facts
 * are never refused here: what contradicts the books becomes a balance that does not add up.
 */
@NullMarked
package org.bandtrail.supplystock.received;

import org.jspecify.annotations.NullMarked;
