/**
 * Printed labels for reels and batches: the number in large letters and as a QR code that a hand scanner reads, with
 * item, length in metres and feet, width, lot and expiry. Sheets of several sizes and a printer for single labels are
 * known; a partly used sheet is begun at any label. The layout is pure arithmetic in tenths of a millimetre, the drawing
 * is a PDF made with free libraries, and nothing is stored: a label can be printed again whenever it comes off.
 */
@NullMarked
package org.bandtrail.supplystock.labels;

import org.jspecify.annotations.NullMarked;
