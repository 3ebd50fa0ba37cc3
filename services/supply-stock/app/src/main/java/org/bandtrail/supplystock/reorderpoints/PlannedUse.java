package org.bandtrail.supplystock.reorderpoints;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.supplystock.needs.PlannedNeed;
import org.bandtrail.supplystock.reordering.PlannedDemand;

/**
 * What plans need of one item from one depot until a delivery ordered today could be there.
 *
 * @param until last day that counts: today plus the lead time
 * @param quantity of all plans that begin by then, mm or pieces; what should be done by now and is not is among it
 * @param coveredDays days from today until then on which planned work goes on
 * @param plans their names, by day
 */
record PlannedUse(LocalDate until, long quantity, int coveredDays, List<String> plans) {

    /** The needs by item and depot, as {@link UseRecords.ItemAtDepot#key} names them. */
    static Map<String, List<PlannedNeed>> byKey(List<PlannedNeed> needs) {
        Map<String, List<PlannedNeed>> byKey = new HashMap<>();
        for (PlannedNeed need : needs) {
            byKey.computeIfAbsent(need.material() + " " + need.depot(), unused -> new ArrayList<>())
                    .add(need);
        }
        return byKey;
    }

    /**
     * Adds up.
     *
     * @param needs of this item and depot
     * @param today first day whose use is still to come
     * @param leadTimeDays 0 or more
     */
    static PlannedUse of(List<PlannedNeed> needs, LocalDate today, int leadTimeDays) {
        LocalDate until = today.plusDays(leadTimeDays);
        List<PlannedNeed> counted =
                needs.stream().filter(need -> !need.day().isAfter(until)).toList();
        Set<LocalDate> covered = new HashSet<>();
        for (PlannedNeed need : counted) {
            LocalDate first = need.day().isBefore(today) ? today : need.day();
            for (LocalDate day = first; !day.isAfter(need.lastDay()) && day.isBefore(until); day = day.plusDays(1)) {
                covered.add(day);
            }
        }
        return new PlannedUse(
                until,
                counted.stream().mapToLong(PlannedNeed::quantity).sum(),
                covered.size(),
                counted.stream().map(PlannedNeed::planId).distinct().toList());
    }

    PlannedDemand demand() {
        return new PlannedDemand(quantity, coveredDays);
    }
}
