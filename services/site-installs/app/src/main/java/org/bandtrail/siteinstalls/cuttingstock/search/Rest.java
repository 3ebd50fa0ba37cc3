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
        int[] kinds = IntStream.range(0, demand.length)
                .filter(kind -> demand[kind] > 0)
                .toArray();
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

    /** What a plan for the whole task cuts from the reels of the rest, in numbers of the rest. */
    Layout inPart(Layout whole, int kindsInWhole) {
        int[] kindInPart = new int[kindsInWhole];
        for (int kind = 0; kind < kinds.length; kind++) {
            kindInPart[kinds[kind]] = kind;
        }
        Layout part = new Layout(task);
        for (int reel = 0; reel < reels.length; reel++) {
            int[] on = whole.on(reels[reel]);
            part.put(reel, Arrays.stream(on).map(kind -> kindInPart[kind]).toArray());
        }
        part.leaveUncut(
                Arrays.stream(whole.uncut()).map(kind -> kindInPart[kind]).toArray());
        return part;
    }

    /** The plan for the whole task with this one for the rest in it. */
    Layout inWhole(Layout whole, Layout part) {
        Layout both = whole.copy();
        for (int reel = 0; reel < reels.length; reel++) {
            both.put(reels[reel], inWhole(part.on(reel)));
        }
        both.leaveUncut(inWhole(part.uncut()));
        return both;
    }

    /** Contents of a reel, in numbers of the whole task. */
    int[] inWhole(int[] contents) {
        return Arrays.stream(contents).map(kind -> kinds[kind]).toArray();
    }
}
