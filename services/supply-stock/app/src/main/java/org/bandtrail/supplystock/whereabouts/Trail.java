package org.bandtrail.supplystock.whereabouts;

/**
 * The whole trail, for each kind of material. Quantities are millimetres for tape and mesh, pieces for fasteners.
 *
 * @param unknown what the field used of reels and batches whose receipt is not in the books
 */
public record Trail(Stretch tape, Stretch mesh, Stretch fasteners, Stretch unknown) {

    /**
     * How much is at each station of the trail; {@code received} is the sum of the others.
     *
     * @param setAside at depots, not to be used until accepted or released
     * @param slit cut lengthwise into narrower reels, less what was made so; 0 over all reels together
     * @param crew negative if crews used more than the books knew
     * @param missing not brought back and not settled; negative if more came back than the books knew
     */
    public record Stretch(
            long received,
            long setAside,
            long depot,
            long transit,
            long vehicle,
            long crew,
            long tree,
            long bag,
            long disposed,
            long slit,
            long missing,
            long writtenOff) {
        static final Stretch NOTHING = new Stretch(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    }
}
