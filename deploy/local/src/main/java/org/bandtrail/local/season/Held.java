package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.List;

/** What one place physically holds of one reel: what is still wound up, and mesh pieces laid aside for use again. */
final class Held {
    final String reelId;
    final String material;
    private final List<Long> pieces = new ArrayList<>();
    private long woundMm;

    Held(String reelId, String material, long woundMm) {
        this.reelId = reelId;
        this.material = material;
        this.woundMm = woundMm;
    }

    long woundMm() {
        return woundMm;
    }

    long totalMm() {
        return woundMm + pieces.stream().mapToLong(Long::longValue).sum();
    }

    boolean hasPieces() {
        return !pieces.isEmpty();
    }

    /** Cuts this much off what is wound up. */
    void cut(long mm) {
        if (mm > woundMm) {
            throw new IllegalStateException("Reel %s has %d mm left, %d mm asked.".formatted(reelId, woundMm, mm));
        }
        woundMm -= mm;
    }

    /** Lays a used piece aside for use again. */
    void layAside(long mm) {
        pieces.add(mm);
    }

    /** Takes the first laid-aside piece between the two lengths; 0 if there is none. */
    long takePiece(long shortestMm, long longestMm) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i) >= shortestMm && pieces.get(i) <= longestMm) {
                return pieces.remove(i);
            }
        }
        return 0;
    }

    /** Loses some of what is wound up, as happens between shelf and truck. */
    void lose(long mm) {
        woundMm -= Math.min(mm, woundMm);
    }

    /** Takes over what another place held of the same reel. */
    void join(Held other) {
        woundMm += other.woundMm;
        pieces.addAll(other.pieces);
    }
}
