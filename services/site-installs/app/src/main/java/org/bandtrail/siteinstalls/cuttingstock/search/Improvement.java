package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Betters a plan: a few reels are emptied and filled anew from the same pieces, in another order. The result is kept
 * when it is not worse, now and then also when it is a little worse, and the best plan seen is the answer.
 */
final class Improvement {
    private static final int MOST_REELS = 6;
    private static final int MOST_PIECES = 80;
    private final CutTask task;
    private final Chance chance;
    private final BooleanSupplier over;
    private Layout now;
    private Score score;
    private Layout best;
    private Score bestScore;

    Improvement(CutTask task, Layout start, Chance chance, BooleanSupplier over) {
        this.task = task;
        this.chance = chance;
        this.over = over;
        this.now = start.copy();
        this.score = start.score();
        this.best = start;
        this.bestScore = score;
    }

    Layout best() {
        return best;
    }

    Score bestScore() {
        return bestScore;
    }

    /**
     * Tries so many times, or until there is nothing left to win.
     *
     * @param rounds how many tries
     * @param goal a cost no plan can be below; reaching it ends the search at once
     * @return true when the goal is reached
     */
    boolean run(int rounds, long goal) {
        long slack = task.scale() * Math.max(1, task.usable() < Integer.MAX_VALUE / 2 ? task.usable() / 8 : 16);
        for (int round = 0; round < rounds && bestScore.cost() > goal; round++) {
            if ((round & 15) == 0 && over.getAsBoolean()) {
                break;
            }
            long allowed = slack * (rounds - round) / rounds;
            step(allowed);
            if ((round & 4095) == 4095) {
                now = best.copy();
                score = bestScore;
            }
        }
        return bestScore.cost() <= goal;
    }

    /** Betters what stands below the cost: fewer part reels, longer leftovers, older reels. */
    void polish(int rounds) {
        run(rounds, Long.MIN_VALUE);
    }

    /** The plan the search stands at, the best or one a little worse. */
    Layout now() {
        return now;
    }

    /** Goes on from another plan. */
    void offer(Layout other) {
        now = other.copy();
        score = now.score();
        if (score.compareTo(bestScore) < 0) {
            best = now.copy();
            bestScore = score;
        }
    }

    private void step(long allowed) {
        int[] reels = chosen();
        Score before = Score.ZERO;
        Pool pool = new Pool(task, MOST_PIECES);
        for (int reel : reels) {
            before = before.plus(Score.of(task, reel, now.weight(reel)));
            pool.add(now.on(reel));
        }
        int[] uncut = now.uncut();
        boolean withUncut = uncut.length > 0 && pool.size() + uncut.length <= 4 * MOST_PIECES;
        if (withUncut) {
            pool.add(uncut);
            for (int kind : uncut) {
                before = before.plus(Score.uncut(task, kind));
            }
        }
        if (pool.size() == 0 || pool.size() > 5 * MOST_PIECES) {
            return;
        }
        int[][] filled = new Refill(task, chance).fill(reels, pool);
        int[] left = pool.takeAll();
        if (left.length > 0 && !withUncut) {
            return;
        }
        take(reels, filled, withUncut ? left : uncut, before, left, allowed);
    }

    private void take(int[] reels, int[][] filled, int[] uncut, Score before, int[] left, long allowed) {
        Score after = Score.ZERO;
        for (int i = 0; i < reels.length; i++) {
            after = after.plus(Score.of(task, reels[i], Refill.weight(task, filled[i])));
        }
        for (int kind : left) {
            after = after.plus(Score.uncut(task, kind));
        }
        Score next = score.plus(after).minus(before);
        long gathered = 0;
        for (int i = 0; i < reels.length; i++) {
            gathered += emptySquared(reels[i], Refill.weight(task, filled[i]))
                    - emptySquared(reels[i], now.weight(reels[i]));
        }
        boolean better = next.cost() < score.cost() || next.cost() == score.cost() && gathered > 0;
        boolean even = next.cost() == score.cost() && gathered == 0 && next.compareTo(score) <= 0;
        if (!better && !even && (next.cost() > bestScore.cost() + allowed || !chance.percent(30))) {
            return;
        }
        for (int i = 0; i < reels.length; i++) {
            now.put(reels[i], filled[i]);
        }
        now.leaveUncut(uncut);
        score = next;
        if (score.compareTo(bestScore) < 0) {
            best = now.copy();
            bestScore = score;
        }
    }

    /** Room gathered on one reel can be of use, room spread over many cannot. */
    private long emptySquared(int reel, long weight) {
        long empty = weight == 0 ? 0 : task.capacity(reel) - weight;
        return empty * empty;
    }

    /** Up to {@value #MOST_REELS} different reels, those that lose material more often than others. */
    private int[] chosen() {
        int many = Math.min(task.reels(), 2 + chance.below(MOST_REELS - 1));
        int[] reels = new int[many];
        int found = 0;
        for (int tries = 0; tries < 12 * many && found < many; tries++) {
            int reel = chance.below(task.reels());
            boolean used = now.weight(reel) > 0;
            boolean loses = used && task.taken(reel, now.weight(reel)) > now.weight(reel);
            boolean wanted = loses || chance.percent(used ? 50 : 25);
            if (wanted && !contains(reels, found, reel)) {
                reels[found++] = reel;
            }
        }
        return Arrays.copyOf(reels, found);
    }

    private static boolean contains(int[] numbers, int size, int number) {
        for (int i = 0; i < size; i++) {
            if (numbers[i] == number) {
                return true;
            }
        }
        return false;
    }
}
