/**
 * Tests of the promise: each record has a sample, and each sample survives the way into the record and back without a
 * change. A sample that was published once is never edited, because readers were built against it. New ones are added.
 */
@NullMarked
package org.bandtrail.supplystock.contract.v1;

import org.jspecify.annotations.NullMarked;
