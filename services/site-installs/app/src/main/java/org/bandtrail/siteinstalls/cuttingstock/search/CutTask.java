package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * A job in whole numbers. A piece of length l with blade allowance b weighs l + b, and a reel of length L holds L + b:
 * then a last piece that ends with the reel, or within the last cut of it, fits exactly when it fits in truth.
 *
 * @param weights per kind of piece, length plus blade allowance in mm, falling
 * @param demand per kind, how many are wanted
 * @param lengths per reel, in mm
 * @param fresh per reel, whether it is new
 * @param ages per reel, its place in the order of use, 0 first
 * @param blade what a cut takes, in mm
 * @param usable shortest usable rest in mm, at least 1
 * @param worth loss in mm that is accepted to leave a new reel closed
 * @param scale one millimetre of loss in the units of {@link #cost}: more than all new reels together
 */
public record CutTask(
        int[] weights,
        int[] demand,
        int[] lengths,
        boolean[] fresh,
        int[] ages,
        int blade,
        int usable,
        int worth,
        long scale) {

    /** How many kinds of pieces. */
    public int kinds() {
        return weights.length;
    }

    /** How many reels. */
    public int reels() {
        return lengths.length;
    }

    /** How much weight a reel holds, in mm. */
    public int capacity(int reel) {
        return lengths[reel] + blade;
    }

    /** All pieces together, in mm of weight. */
    public long wanted() {
        long sum = 0;
        for (int kind = 0; kind < kinds(); kind++) {
            sum += (long) weights[kind] * demand[kind];
        }
        return sum;
    }

    /** How many pieces. */
    public int pieces() {
        int sum = 0;
        for (int count : demand) {
            sum += count;
        }
        return sum;
    }

    /** How many new reels. */
    public int freshReels() {
        int sum = 0;
        for (boolean one : fresh) {
            sum += one ? 1 : 0;
        }
        return sum;
    }

    /**
     * What is gone when pieces of this weight come off a reel, in mm: their weight, and the rest if it is scrap. When
     * the last cut takes less than a whole allowance it counts as whole, so that scrap alone makes the difference.
     */
    public long taken(int reel, long weight) {
        return lengths[reel] - weight >= usable ? weight : Math.max(lengths[reel], weight);
    }

    /** The usable rest of a reel after pieces of this weight, in mm, 0 if there is none. */
    public long rest(int reel, long weight) {
        return lengths[reel] - weight >= usable ? lengths[reel] - weight : 0;
    }

    /** The greatest length of which every weight is a whole multiple, in mm; at least 1. */
    int grain() {
        int grain = 0;
        for (int weight : weights) {
            for (int rest = weight; rest != 0; ) {
                int next = grain % rest;
                grain = rest;
                rest = next;
            }
        }
        return Math.max(1, grain);
    }

    /** With the scale that follows from the number of new reels. */
    public static CutTask of(
            int[] weights, int[] demand, int[] lengths, boolean[] fresh, int[] ages, int blade, int usable, int worth) {
        long scale = 1;
        for (boolean one : fresh) {
            scale += one ? 1 : 0;
        }
        return new CutTask(weights, demand, lengths, fresh, ages, blade, usable, worth, scale);
    }

    /** Loss first, opened reels second, as one number. A reel with no piece costs nothing. */
    public long cost(int reel, long weight) {
        return weight == 0 ? 0 : scale * (taken(reel, weight) + (fresh[reel] ? worth : 0)) + (fresh[reel] ? 1 : 0);
    }

    /** What a piece left uncut costs, so that no saving of material is worth it. */
    public long uncutCost(int kind) {
        return uncutBase() + scale * weights[kind];
    }

    /** More than all reels together cost. */
    public long uncutBase() {
        long sum = 1;
        for (int reel = 0; reel < reels(); reel++) {
            sum += scale * (capacity(reel) + (fresh[reel] ? worth : 0)) + 1;
        }
        return sum;
    }
}
