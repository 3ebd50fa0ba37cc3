package org.bandtrail.inspections.pieces;

import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/**
 * How the places of this service are written: {@code kind:id}. Custody is by person, waste is by bag. The same spelling
 * stands in the published moves, so that the ledger of supply-stock and this service mean the same place.
 */
public final class Places {
    private static final String BAG = "bag:";
    private static final int LONGEST_IDENTITY = 40;

    private Places() {}

    /** With this person. */
    public static String crew(PersonId person) {
        return "crew:" + person.value();
    }

    /** On this tree. */
    public static String tree(TreeId tree) {
        return "tree:" + tree.value();
    }

    /** In this waste bag. */
    public static String bag(BagId bag) {
        return BAG + bag.value();
    }

    /** Gone with this load. */
    public static String disposed(LoadId load) {
        return "disposed:" + load.value();
    }

    /**
     * The bag that stands for "this person put it into a bag and wrote down none". Waste without a bag is still waste;
     * it waits under the person's name until it leaves with a load.
     */
    public static BagId looseBag(PersonId person) {
        String name = "LOOSE-" + person.value();
        return new BagId(name.substring(0, Math.min(LONGEST_IDENTITY, name.length())));
    }

    /** The identity of the bag, or null if the place is no bag. */
    public static @Nullable String bagIn(String place) {
        return place.startsWith(BAG) ? place.substring(BAG.length()) : null;
    }
}
