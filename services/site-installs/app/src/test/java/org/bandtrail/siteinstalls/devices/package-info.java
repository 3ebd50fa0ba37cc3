/**
 * Tests of the kinds of devices. Lengths are computed by hand beside each check, from the trade's values in the policy
 * of the samples. The kinds themselves are read from the same file the service reads. Over HTTP the whole service runs
 * on a real database.
 */
@NullMarked
package org.bandtrail.siteinstalls.devices;

import org.jspecify.annotations.NullMarked;
