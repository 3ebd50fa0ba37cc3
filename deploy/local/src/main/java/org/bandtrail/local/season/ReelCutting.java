package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.List;

/** Plans which piece comes from which reel of one material: a reel is used until the next piece no longer fits. */
final class ReelCutting {
    final String materialCode;
    final long reelMm;
    private final String prefix;
    private final List<Long> used = new ArrayList<>();

    ReelCutting(String materialCode, String prefix, long reelMm) {
        this.materialCode = materialCode;
        this.prefix = prefix;
        this.reelMm = reelMm;
    }

    /** Cuts a piece and says from which reel. */
    String cut(long mm) {
        if (used.isEmpty() || used.getLast() + mm > reelMm) {
            used.add(0L);
        }
        used.set(used.size() - 1, used.getLast() + mm);
        return reelId(used.size() - 1);
    }

    int reels() {
        return used.size();
    }

    String reelId(int index) {
        return prefix + (index + 1);
    }

    /** What should be left on a reel. */
    long leftMm(int index) {
        return reelMm - used.get(index);
    }

    long usedMm() {
        return used.stream().mapToLong(Long::longValue).sum();
    }
}
