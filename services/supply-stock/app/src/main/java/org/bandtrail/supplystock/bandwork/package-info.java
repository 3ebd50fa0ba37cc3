/**
 * Work done with bands, as the field services told it: how long each band hung and what it caught. It is kept only to put
 * cost beside work: cost per tree, per day a band hung, per thousand insects. Facts come from two services in any order
 * and are never refused; what is not known yet is null. Written by {@code received} in the reader's transaction, so each
 * fact counts once.
 */
@NullMarked
package org.bandtrail.supplystock.bandwork;

import org.jspecify.annotations.NullMarked;
