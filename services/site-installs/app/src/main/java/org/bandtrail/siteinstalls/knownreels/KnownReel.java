package org.bandtrail.siteinstalls.knownreels;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;

/**
 * What supply-stock said about a reel when it received it.
 *
 * @param reelId the reel
 * @param materialCode the supply item
 * @param kind tape or mesh
 * @param width across the roll, zero if not told
 * @param opening of a mesh, null for tape or if not told
 */
public record KnownReel(
        ReelId reelId,
        MaterialCode materialCode,
        MaterialKind kind,
        Length width,
        @Nullable Length opening) {}
