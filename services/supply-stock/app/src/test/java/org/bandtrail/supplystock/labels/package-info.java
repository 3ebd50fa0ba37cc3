/**
 * Tests of printed labels. The page is rendered as a printer would and the QR code is read back with a decoder that is
 * not ours, label by label, on every sheet that is known. Check digits are compared with published numbers.
 */
@NullMarked
package org.bandtrail.supplystock.labels;

import org.jspecify.annotations.NullMarked;
