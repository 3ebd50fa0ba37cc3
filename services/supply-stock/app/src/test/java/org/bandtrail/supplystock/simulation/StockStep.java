package org.bandtrail.supplystock.simulation;

import java.util.random.RandomGenerator;

/**
 * One step of a history, as data, so that it can be left out of a shortened history. Reels 0 and 1 are wide, 2 and 3
 * narrow; days count from 1 May 2026.
 */
record StockStep(Kind kind, int reel, int other, long amount, int day, boolean yes) {
    /** What is done. */
    enum Kind {
        RECEIVE,
        DELIVER,
        ACCEPT,
        PUT_IN_BIN,
        SET_ASIDE,
        RELEASE,
        SEND,
        ARRIVE,
        CALL_OFF,
        SLIT,
        HAND_OUT,
        FIT,
        TAKE_DOWN,
        DISPOSE,
        RETURN,
        SETTLE,
        ADJUST,
        CHANGE_COST,
        FREIGHT,
        WRITE_DOWN,
        SEND_BACK,
        CLOSE_MONTH
    }

    static StockStep any(RandomGenerator random) {
        Kind[] kinds = Kind.values();
        return new StockStep(
                kinds[random.nextInt(kinds.length)],
                random.nextInt(4),
                random.nextInt(3),
                1 + random.nextInt(9_000),
                random.nextInt(150),
                random.nextBoolean());
    }
}
