package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The trees of the invented place: where each stands, what it is, how thick, how much the pest likes it. */
final class Stand {
    /** The host the bands are for: tree-of-heaven, by its EPPO code. */
    static final String HOST = "AILAL";

    /** The thinnest trunk to band: 6 in diameter, girth 479 mm (one state programme's rule, see the trade notes). */
    static final long THINNEST_MM = 479;

    private Stand() {}

    /**
     * One tree.
     *
     * @param girthMm round the trunk, as the inventory's unit can write it
     * @param written the girth or diameter as its inventory writes it
     * @param liking how many times the average catch this tree draws
     */
    record Tree(
            String siteId,
            String crewId,
            String tag,
            String species,
            long girthMm,
            String written,
            boolean alive,
            double liking) {

        boolean canBeBanded() {
            return alive && species.equals(HOST) && girthMm >= THINNEST_MM;
        }
    }

    /** Grows the trees of all sites. */
    static List<Tree> grow(Place place, Dice dice) {
        List<Tree> trees = new ArrayList<>();
        for (Place.Site site : place.sites()) {
            Inventory inventory = Inventory.of(site.siteId());
            for (int number = 1; number <= site.trees(); number++) {
                double girth = StrictMath.exp(dice.normal(StrictMath.log(820), 0.30));
                String written = inventory.written(Math.clamp(Math.round(girth), 360, 2100));
                trees.add(new Tree(
                        site.siteId(),
                        site.crewId(),
                        String.format(Locale.ROOT, "T%03d", number),
                        species(dice),
                        inventory.girthMm(written),
                        written,
                        !dice.chance(25),
                        dice.gamma(1.3, 1)));
            }
        }
        return List.copyOf(trees);
    }

    /** Mostly the host; the rest are its look-alikes staghorn sumac and black walnut, and red maple (EPPO codes). */
    private static String species(Dice dice) {
        int throwOf = dice.between(1, 100);
        return throwOf <= 88 ? HOST : throwOf <= 93 ? "RHUTY" : throwOf <= 97 ? "IUGNI" : "ACRRB";
    }
}
