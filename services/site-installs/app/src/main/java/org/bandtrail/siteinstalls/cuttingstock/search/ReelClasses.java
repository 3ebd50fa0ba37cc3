package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Reels that are alike: equally long, and all new or all part reels. The linear program counts them together. */
final class ReelClasses {
    private final List<List<Integer>> reels;

    ReelClasses(CutTask task) {
        TreeMap<Long, List<Integer>> alike = new TreeMap<>();
        for (int reel = 0; reel < task.reels(); reel++) {
            long key = 2L * task.lengths()[reel] + (task.fresh()[reel] ? 1 : 0);
            alike.computeIfAbsent(key, made -> new ArrayList<>()).add(reel);
        }
        this.reels = List.copyOf(alike.values());
    }

    /** The class here of reels like one of another task, -1 if there is none. */
    int like(CutTask task, CutTask other, int reel) {
        for (int cls = 0; cls < size(); cls++) {
            int mine = one(cls);
            if (task.lengths()[mine] == other.lengths()[reel] && task.fresh()[mine] == other.fresh()[reel]) {
                return cls;
            }
        }
        return -1;
    }

    int size() {
        return reels.size();
    }

    /** How many reels a class has. */
    int count(int cls) {
        return reels.get(cls).size();
    }

    /** The reels of a class. */
    List<Integer> reels(int cls) {
        return reels.get(cls);
    }

    /** One reel that stands for all of the class. */
    int one(int cls) {
        return reels.get(cls).getFirst();
    }
}
