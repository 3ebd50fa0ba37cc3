package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;

/** Which kinds come off which reel, and which stay uncut. Changed in place by the search; {@link #copy} keeps one. */
public final class Layout {
    private final CutTask task;
    private final int[][] contents;
    private final long[] weights;
    private int[] uncut;

    /** Nothing cut: every piece is uncut. */
    Layout(CutTask task) {
        this.task = task;
        this.contents = new int[task.reels()][0];
        this.weights = new long[task.reels()];
        this.uncut = new int[task.pieces()];
        int at = 0;
        for (int kind = 0; kind < task.kinds(); kind++) {
            Arrays.fill(uncut, at, at + task.demand()[kind], kind);
            at += task.demand()[kind];
        }
    }

    private Layout(Layout other) {
        this.task = other.task;
        this.contents = other.contents.clone();
        this.weights = other.weights.clone();
        this.uncut = other.uncut;
    }

    Layout copy() {
        return new Layout(this);
    }

    /** The kinds that come off a reel; not to be changed. */
    public int[] on(int reel) {
        return contents[reel];
    }

    /** The kinds that stay uncut; not to be changed. */
    public int[] uncut() {
        return uncut;
    }

    long weight(int reel) {
        return weights[reel];
    }

    void put(int reel, int[] kinds) {
        long sum = 0;
        for (int kind : kinds) {
            sum += task.weights()[kind];
        }
        if (sum > task.capacity(reel) && kinds.length > 0) {
            throw new IllegalStateException(
                    "[%d mm] do not come off reel [%d] of [%d mm].".formatted(sum, reel, task.capacity(reel)));
        }
        contents[reel] = kinds;
        weights[reel] = sum;
    }

    void leaveUncut(int[] kinds) {
        uncut = kinds;
    }

    /** New reels cut. */
    int opened() {
        int opened = 0;
        for (int reel = 0; reel < task.reels(); reel++) {
            opened += task.fresh()[reel] && weights[reel] > 0 ? 1 : 0;
        }
        return opened;
    }

    Score score() {
        Score sum = Score.ZERO;
        for (int reel = 0; reel < task.reels(); reel++) {
            sum = sum.plus(Score.of(task, reel, weights[reel]));
        }
        for (int kind : uncut) {
            sum = sum.plus(Score.uncut(task, kind));
        }
        return sum;
    }
}
