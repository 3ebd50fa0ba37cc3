package org.bandtrail.siteinstalls.devices;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;

/**
 * What one device takes of one part: a length or a count.
 *
 * @param part the part
 * @param length to cut, null for what is counted
 * @param pieces to count out, null for what is cut
 * @param formula the calculation with its numbers
 */
public record NeededPiece(
        DevicePart part, @Nullable Length length, @Nullable Pieces pieces, String formula) {}
