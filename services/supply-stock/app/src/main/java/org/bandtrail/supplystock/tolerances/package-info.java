/**
 * How much an invoice may differ from order and delivery before a person has to decide, and from which sum on two
 * persons have to. A policy is data with a source and a reason; a new one never changes an old one. Until somebody sets
 * a policy the defaults of the migration hold, which are common practice without a source.
 */
@NullMarked
package org.bandtrail.supplystock.tolerances;

import org.jspecify.annotations.NullMarked;
