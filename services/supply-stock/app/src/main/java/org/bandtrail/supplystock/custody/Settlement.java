package org.bandtrail.supplystock.custody;

/**
 * What became of one reel or batch of one kit. Law: handed out = fitted + returned + scrapped + missing + settled +
 * elsewhere + still out. Figures are millimetres of a reel, pieces of a batch.
 *
 * @param fitted on trees, less what came back from trees into use
 * @param missing what did not come back and is not explained; negative if more came back than the books knew
 * @param settled missing that was written off; negative if it was found
 * @param elsewhere went to another person or a vehicle, less what came from there
 * @param stillOut with the person; negative if more was used than the books knew
 */
record Settlement(
        long handedOut,
        long fitted,
        long returned,
        long scrapped,
        long missing,
        long settled,
        long elsewhere,
        long stillOut) {
    static final Settlement NOTHING = new Settlement(0, 0, 0, 0, 0, 0, 0, 0);

    /** The settlement after a quantity went from one station to another. */
    Settlement after(Station source, Station target, long quantity) {
        return plus(source, -quantity).plus(target, quantity);
    }

    private Settlement plus(Station station, long quantity) {
        return new Settlement(
                handedOut - (station == Station.HANDED_OUT ? quantity : 0),
                fitted + (station == Station.FITTED ? quantity : 0),
                returned + (station == Station.RETURNED ? quantity : 0),
                scrapped + (station == Station.SCRAPPED ? quantity : 0),
                missing + (station == Station.MISSING ? quantity : 0),
                settled + (station == Station.SETTLED ? quantity : 0),
                elsewhere + (station == Station.ELSEWHERE ? quantity : 0),
                stillOut + (station == Station.WITH_PERSON ? quantity : 0));
    }

    /** After the rest was measured nothing is out; what the figures have left over did not come back. */
    Settlement measured() {
        return after(Station.WITH_PERSON, Station.MISSING, stillOut);
    }

    /** A use that the books took from a later kit was in truth what this one missed. */
    Settlement explained() {
        return stillOut < 0 && missing > 0
                ? after(Station.MISSING, Station.WITH_PERSON, Math.min(-stillOut, missing))
                : this;
    }

    /** Handed out less everything that became of it; zero by law. */
    long gap() {
        return handedOut - fitted - returned - scrapped - missing - settled - elsewhere - stillOut;
    }

    /** The sum of two settlements, of several reels of one material for example. */
    Settlement plus(Settlement other) {
        return new Settlement(
                handedOut + other.handedOut,
                fitted + other.fitted,
                returned + other.returned,
                scrapped + other.scrapped,
                missing + other.missing,
                settled + other.settled,
                elsewhere + other.elsewhere,
                stillOut + other.stillOut);
    }
}
