package org.bandtrail.siteinstalls.planmaking;

import java.util.Arrays;

/**
 * A short way past all trees: nearest neighbour from the first one, then bettered by reversing stretches (2-opt, G. A.
 * Croes 1958) and moving short stretches elsewhere (Or-opt, I. Or 1976) until neither helps; citations from memory. The
 * first stop stays the first, because there is the gate. Never longer than the nearest-neighbour way it starts from,
 * the same for the same input, at most a few seconds for 500 stops. It finds a good way, not always the shortest.
 */
final class Walk {
    /** Gains below this are rounding of the distances and could turn for ever; metres. */
    private static final double LEAST_GAIN = 1e-7;

    private static final int LONGEST_STRETCH = 3;
    private final int[] stops;
    private final Distance distance;
    private final boolean home;

    private Walk(int count, Distance distance, boolean home) {
        this.distance = distance;
        this.home = home;
        this.stops = nearestNeighbour(count, distance);
    }

    /** How far it is from one stop to another, the same both ways, 0 or more, in any unit. */
    @FunctionalInterface
    interface Distance {
        double between(int one, int other);
    }

    /**
     * The order of a walk that ends at its last stop.
     *
     * @param count stops are 0 to count - 1
     */
    static int[] oneWay(int count, Distance distance) {
        return new Walk(count, distance, false).bettered();
    }

    /** The order of a walk that comes back to its first stop. */
    static int[] round(int count, Distance distance) {
        return new Walk(count, distance, true).bettered();
    }

    /** Always on to the nearest stop that is left; of equals the one listed first. */
    static int[] nearestNeighbour(int count, Distance distance) {
        int[] way = new int[count];
        boolean[] seen = new boolean[count];
        for (int step = 1; step < count; step++) {
            seen[way[step - 1]] = true;
            int nearest = -1;
            for (int stop = 0; stop < count; stop++) {
                if (!seen[stop]
                        && (nearest < 0
                                || distance.between(way[step - 1], stop) < distance.between(way[step - 1], nearest))) {
                    nearest = stop;
                }
            }
            way[step] = nearest;
        }
        return way;
    }

    /** How long a way is; with the way home from the last to the first stop if it is a round. */
    static double length(int[] way, Distance distance, boolean home) {
        double length = home && way.length > 1 ? distance.between(way[way.length - 1], way[0]) : 0;
        for (int step = 1; step < way.length; step++) {
            length += distance.between(way[step - 1], way[step]);
        }
        return length;
    }

    private int[] bettered() {
        boolean better = stops.length > 2;
        while (better) {
            better = reversed() | moved();
        }
        return stops;
    }

    private boolean reversed() {
        boolean better = false;
        for (int from = 1; from < stops.length - 1; from++) {
            for (int to = from + 1; to < stops.length; to++) {
                double before = legs(stops[from - 1], stops[from]) + legs(stops[to], next(to));
                double after = legs(stops[from - 1], stops[to]) + legs(stops[from], next(to));
                if (after < before - LEAST_GAIN) {
                    reverse(from, to);
                    better = true;
                }
            }
        }
        return better;
    }

    private boolean moved() {
        boolean better = false;
        for (int size = 1; size <= LONGEST_STRETCH; size++) {
            for (int from = 1; from + size <= stops.length; from++) {
                better |= movedToBestPlace(from, from + size - 1);
            }
        }
        return better;
    }

    private boolean movedToBestPlace(int from, int to) {
        double saved = legs(stops[from - 1], stops[from]) + legs(stops[to], next(to)) - legs(stops[from - 1], next(to));
        double bestGain = LEAST_GAIN;
        int best = -1;
        boolean turned = false;
        for (int at = 0; at < stops.length; at++) {
            if (at >= from - 1 && at <= to) {
                continue;
            }
            double cut = legs(stops[at], next(at));
            double straight = saved + cut - legs(stops[at], stops[from]) - legs(stops[to], next(at));
            double back = saved + cut - legs(stops[at], stops[to]) - legs(stops[from], next(at));
            if (Math.max(straight, back) > bestGain) {
                bestGain = Math.max(straight, back);
                best = at;
                turned = back > straight;
            }
        }
        if (best < 0) {
            return false;
        }
        move(from, to, best, turned);
        return true;
    }

    private void move(int from, int to, int after, boolean turned) {
        int[] stretch = Arrays.copyOfRange(stops, from, to + 1);
        int size = stretch.length;
        int place = after;
        if (after > to) {
            System.arraycopy(stops, to + 1, stops, from, after - to);
            place = after - size;
        } else {
            System.arraycopy(stops, after + 1, stops, after + 1 + size, from - after - 1);
        }
        for (int each = 0; each < size; each++) {
            stops[place + 1 + each] = stretch[turned ? size - 1 - each : each];
        }
    }

    private void reverse(int from, int to) {
        for (int left = from, right = to; left < right; left++, right--) {
            int kept = stops[left];
            stops[left] = stops[right];
            stops[right] = kept;
        }
    }

    /** The stop after a step; -1 at the end of a walk that does not come back. */
    private int next(int step) {
        if (step + 1 < stops.length) {
            return stops[step + 1];
        }
        return home ? stops[0] : -1;
    }

    private double legs(int one, int other) {
        return one < 0 || other < 0 ? 0 : distance.between(one, other);
    }
}
