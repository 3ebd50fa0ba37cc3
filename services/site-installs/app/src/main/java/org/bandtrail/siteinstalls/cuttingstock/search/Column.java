package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;

/**
 * One way to cut a reel of a class.
 *
 * @param cls the class of the reel
 * @param kinds the kinds cut, rising
 * @param counts how many of each, at least 1
 * @param cost in the units of {@link CutTask#cost}
 */
record Column(int cls, int[] kinds, int[] counts, long cost) {

    /** From the count of each kind. */
    static Column of(CutTask task, ReelClasses classes, int cls, int[] perKind) {
        int many = 0;
        long weight = 0;
        for (int kind = 0; kind < perKind.length; kind++) {
            many += perKind[kind] > 0 ? 1 : 0;
            weight += (long) perKind[kind] * task.weights()[kind];
        }
        int[] kinds = new int[many];
        int[] counts = new int[many];
        int at = 0;
        for (int kind = 0; kind < perKind.length; kind++) {
            if (perKind[kind] > 0) {
                kinds[at] = kind;
                counts[at++] = perKind[kind];
            }
        }
        return new Column(cls, kinds, counts, task.cost(classes.one(cls), weight));
    }

    /** The kinds, each as often as it is cut. */
    int[] contents() {
        int[] all = new int[Arrays.stream(counts).sum()];
        int at = 0;
        for (int i = 0; i < kinds.length; i++) {
            Arrays.fill(all, at, at + counts[i], kinds[i]);
            at += counts[i];
        }
        return all;
    }

    /** The same for columns that cut the same. */
    String name() {
        return cls + Arrays.toString(kinds) + Arrays.toString(counts);
    }
}
