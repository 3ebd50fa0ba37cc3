/**
 * Kits through the front door: from a tree list to the settlement, on a real database. Each test has a depot, items and
 * people of its own, so that tests share one start. Facts of the field are told as the field services tell them.
 */
@NullMarked
package org.bandtrail.supplystock.kits;

import org.jspecify.annotations.NullMarked;
