/**
 * Tests of the promise. Each record has at least one sample, and each sample survives the way into the record and back
 * without a change. A sample that was published once is never edited, because readers were built against it.
 */
@NullMarked
package org.bandtrail.siteinstalls.contract.v1;

import org.jspecify.annotations.NullMarked;
