package org.bandtrail.local.simulation;

import java.util.random.RandomGenerator;

/** One step of a history, as data: it can be left out of a shortened history without changing the others. */
sealed interface Step {
    record Receive(int reel, long mm) implements Step {}

    record HandOut(int reel, int person) implements Step {}

    record Fit(int band, int tree, int person, int tapeReel, long tapeMm, int meshReel, long meshMm) implements Step {}

    record ReplaceTape(int band, int person, int reel, long mm, int bag) implements Step {}

    record TakeDown(int band, int person, int bag, boolean meshAgain) implements Step {}

    record Dispose(int bag) implements Step {}

    record Return(int reel, int person, long mm) implements Step {}

    /** Reels 0 and 1 are tape, 2 and 3 mesh. */
    static Step any(RandomGenerator random) {
        return switch (random.nextInt(12)) {
            case 0, 1 -> new Receive(random.nextInt(4), 5_000 + random.nextInt(20_000));
            case 2, 3 -> new HandOut(random.nextInt(4), random.nextInt(2));
            case 4, 5, 6 ->
                new Fit(
                        random.nextInt(6),
                        random.nextInt(3),
                        random.nextInt(2),
                        random.nextInt(2),
                        500 + random.nextInt(2_000),
                        2 + random.nextInt(2),
                        600 + random.nextInt(2_000));
            case 7, 8 ->
                new ReplaceTape(
                        random.nextInt(6),
                        random.nextInt(2),
                        random.nextInt(2),
                        500 + random.nextInt(2_000),
                        random.nextInt(2));
            case 9 -> new TakeDown(random.nextInt(6), random.nextInt(2), random.nextInt(2), random.nextBoolean());
            case 10 -> new Dispose(random.nextInt(2));
            default -> new Return(random.nextInt(4), random.nextInt(2), random.nextInt(20_000));
        };
    }
}
