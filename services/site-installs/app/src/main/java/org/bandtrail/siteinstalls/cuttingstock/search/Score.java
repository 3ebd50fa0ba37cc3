package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * What a plan is worth, level by level; less is better on each. A score is a sum over reels and uncut pieces, so the
 * difference that a few reels make is enough to compare two plans.
 *
 * @param cost pieces left uncut, then material lost, then new reels opened, in the units of {@link CutTask#cost}
 * @param parts part reels in the bins afterwards, less those before
 * @param shortness how much the squares of the usable lengths shrink, each counted in shortest usable pieces: many
 *     short leftovers are worse than few long ones
 * @param late weight taken from each reel, times its place in the order of use
 */
record Score(long cost, long parts, long shortness, long late) implements Comparable<Score> {
    static final Score ZERO = new Score(0, 0, 0, 0);

    /** What it means to take this much weight off a reel. */
    static Score of(CutTask task, int reel, long weight) {
        if (weight == 0) {
            return ZERO;
        }
        long before = task.lengths()[reel] / task.usable();
        long after = task.rest(reel, weight) / task.usable();
        long parts = (after > 0 ? 1 : 0) - (task.fresh()[reel] ? 0 : 1);
        return new Score(task.cost(reel, weight), parts, before * before - after * after, weight * task.ages()[reel]);
    }

    /** What it means to leave a piece of this kind uncut. */
    static Score uncut(CutTask task, int kind) {
        return new Score(task.uncutCost(kind), 0, 0, 0);
    }

    Score plus(Score other) {
        return new Score(cost + other.cost, parts + other.parts, shortness + other.shortness, late + other.late);
    }

    Score minus(Score other) {
        return new Score(cost - other.cost, parts - other.parts, shortness - other.shortness, late - other.late);
    }

    @Override
    public int compareTo(Score other) {
        int level = Long.compare(cost, other.cost);
        level = level != 0 ? level : Long.compare(parts, other.parts);
        level = level != 0 ? level : Long.compare(shortness, other.shortness);
        return level != 0 ? level : Long.compare(late, other.late);
    }
}
