package org.bandtrail.siteinstalls.photos;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A photo of one thing.
 *
 * @param photoId its identity
 * @param width in pixels
 * @param height in pixels
 * @param attachedAt when it came in
 * @param attachedBy who sent it
 * @param erasedAt when the picture was erased, null while it is there
 * @param erasedWhy why, null while it is there
 */
public record PhotoView(
        String photoId,
        int width,
        int height,
        Instant attachedAt,
        String attachedBy,
        @Nullable Instant erasedAt,
        @Nullable String erasedWhy) {}
