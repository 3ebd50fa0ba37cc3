/**
 * What supply stock tells the other services. Private events are translated into the contract's events inside the
 * transaction that writes them, so nothing is told that did not happen and nothing that happened is forgotten. Only
 * this package sees the service's own contract.
 */
@NullMarked
package org.bandtrail.supplystock.published;

import org.jspecify.annotations.NullMarked;
