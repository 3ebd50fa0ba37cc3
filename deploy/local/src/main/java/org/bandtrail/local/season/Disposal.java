package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Waste bags that leave a depot together.
 *
 * @param bagIds the bags, parted by blanks
 * @param truck the number of the works truck
 * @param by the depot keeper who loads them
 */
record Disposal(String bagIds, int truck, String by) {

    /** The loads of this week's Friday, one per depot: what was bagged in the two weeks before this one. */
    static List<Disposal> of(Place place, SeasonBook book, int week) {
        List<Disposal> loads = new ArrayList<>();
        for (Place.Depot depot : place.depots()) {
            List<String> bags = new ArrayList<>();
            for (Place.Crew crew : place.crews()) {
                for (int bagged = week - 2; crew.depotId().equals(depot.depotId()) && bagged < week; bagged++) {
                    String bag = "BAG-" + crew.crewId().charAt(2) + "-" + String.format(Locale.ROOT, "%02d", bagged);
                    if (book.bagsFilled.contains(bag)) {
                        bags.add(bag);
                    }
                }
            }
            if (!bags.isEmpty()) {
                loads.add(new Disposal(String.join(" ", bags), depot.depotId().charAt(2) - '0', depot.keeper()));
            }
        }
        return loads;
    }
}
