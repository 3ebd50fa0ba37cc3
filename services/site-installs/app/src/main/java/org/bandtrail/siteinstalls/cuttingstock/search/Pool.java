package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;

/** Pieces that lie on the bench, waiting for a reel. */
final class Pool {
    private final CutTask task;
    private int[] kinds;
    private int size;
    private long weight;

    Pool(CutTask task, int most) {
        this.task = task;
        this.kinds = new int[most];
    }

    Pool emptyCopy() {
        return new Pool(task, size);
    }

    int size() {
        return size;
    }

    long weight() {
        return weight;
    }

    int[] kinds() {
        return Arrays.copyOf(kinds, size);
    }

    void add(int[] more) {
        if (size + more.length > kinds.length) {
            kinds = Arrays.copyOf(kinds, 2 * (size + more.length));
        }
        for (int kind : more) {
            kinds[size++] = kind;
            weight += task.weights()[kind];
        }
    }

    /** Puts the lightest first, so that sums are read back from the heaviest. */
    void lightestFirst() {
        Arrays.sort(kinds, 0, size);
        for (int i = 0, j = size - 1; i < j; i++, j--) {
            int kept = kinds[i];
            kinds[i] = kinds[j];
            kinds[j] = kept;
        }
    }

    void shuffle(Chance chance) {
        chance.shuffle(kinds, size);
    }

    Reach reach(int limit) {
        int[] weights = new int[size];
        for (int i = 0; i < size; i++) {
            weights[i] = task.weights()[kinds[i]];
        }
        return new Reach(weights, size, limit);
    }

    /** Takes everything. */
    int[] takeAll() {
        int[] all = kinds();
        size = 0;
        weight = 0;
        return all;
    }

    /** Takes the pieces marked. */
    int[] take(boolean[] marked) {
        int[] out = new int[size];
        int taken = 0;
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (marked[i]) {
                out[taken++] = kinds[i];
                weight -= task.weights()[kinds[i]];
            } else {
                kinds[kept++] = kinds[i];
            }
        }
        size = kept;
        return Arrays.copyOf(out, taken);
    }
}
