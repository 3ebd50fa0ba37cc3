/**
 * What work plans need, as site-installs told it: demand that is known before it comes. Each word of a plan is its whole
 * state; it replaces what was known, and an older or repeated word changes nothing. A plan that is done or called off
 * needs nothing. Reorder points look at what is planned until a new delivery could be there.
 */
@NullMarked
package org.bandtrail.supplystock.needs;

import org.jspecify.annotations.NullMarked;
