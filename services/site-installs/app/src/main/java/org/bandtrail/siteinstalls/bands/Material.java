package org.bandtrail.siteinstalls.bands;

import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** What went on a tree, in words for a history. */
final class Material {
    private Material() {}

    static String words(@Nullable Piece tape, @Nullable Piece mesh, @Nullable Fasteners fasteners) {
        StringJoiner words = new StringJoiner(", ");
        words.setEmptyValue("no new pieces");
        if (tape != null) {
            words.add("%s tape of reel %s".formatted(tape.length(), tape.reelId()));
        }
        if (mesh != null) {
            words.add("%s mesh of reel %s".formatted(mesh.length(), mesh.reelId()));
        }
        if (fasteners != null) {
            words.add("%s of batch %s".formatted(fasteners.pieces(), fasteners.batchId()));
        }
        return words.toString();
    }
}
