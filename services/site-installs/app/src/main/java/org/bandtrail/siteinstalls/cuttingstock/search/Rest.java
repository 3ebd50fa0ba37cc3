package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What is left of a task when part of a plan is fixed.
 *
 * @param task the pieces and reels that are left
 * @param kinds per kind of {@code task}, its number in the whole task
 * @param reels per reel of {@code task}, its number in the whole task
 */
record Rest(CutTask task, int[] kinds, int[] reels) {

    /** {@code demand}: how many of each kind are left; {@code free}: which reels are. */
    static Rest of(CutTask whole, int[] demand, boolean[] free) {
        int[] kinds =
                IntStream.range(0, demand.length).filter(kind -> demand[kind] > 0).toArray();
        int[] reels = IntStream.range(0, free.length).filter(reel -> free[reel]).toArray();
        boolean[] fresh = new boolean[reels.length];
        for (int i = 0; i < fresh.length; i++) {
            fresh[i] = whole.fresh()[reels[i]];
        }
        CutTask task = new CutTask(
                Arrays.stream(kinds).map(kind -> whole.weights()[kind]).toArray(),
                Arrays.stream(kinds).map(kind -> demand[kind]).toArray(),
                Arrays.stream(reels).map(reel -> whole.lengths()[reel]).toArray(),
                fresh,
                Arrays.stream(reels).map(reel -> whole.ages()[reel]).toArray(),
                whole.blade(),
                whole.usable(),
                whole.worth(),
                whole.scale());
        return new Rest(task, kinds, reels);
    }

    /** Contents of a reel, in numbers of the whole task. */
    int[] inWhole(int[] contents) {
        return Arrays.stream(contents).map(kind -> kinds[kind]).toArray();
    }
}
