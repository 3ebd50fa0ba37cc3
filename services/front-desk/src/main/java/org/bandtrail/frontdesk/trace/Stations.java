package org.bandtrail.frontdesk.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.bandtrail.frontdesk.neighbours.depot.Traced;

/** The kinds of places of a trace in the order of the trail, with the word people use. */
final class Stations {
    private static final Map<String, ToLongFunction<Traced.Part>> AMOUNTS = amounts();

    private Stations() {}

    private static Map<String, ToLongFunction<Traced.Part>> amounts() {
        Map<String, ToLongFunction<Traced.Part>> amounts = new LinkedHashMap<>();
        amounts.put("set aside", Traced.Part::setAside);
        amounts.put("in depots", Traced.Part::inDepot);
        amounts.put("on the way", Traced.Part::inVehiclesOrTransit);
        amounts.put("with crews", Traced.Part::withCrew);
        amounts.put("on trees", Traced.Part::onTree);
        amounts.put("in waste bags", Traced.Part::inBag);
        amounts.put("disposed", Traced.Part::disposed);
        amounts.put("missing", Traced.Part::missing);
        amounts.put("written off", Traced.Part::writtenOff);
        return amounts;
    }

    /** How much of one reel or batch is at each station, stations with nothing left out. */
    static Map<String, Long> of(Traced.Part part) {
        Map<String, Long> there = new LinkedHashMap<>();
        AMOUNTS.forEach((station, amount) -> {
            long quantity = amount.applyAsLong(part);
            if (quantity > 0) {
                there.put(station, quantity);
            }
        });
        return there;
    }

    /** All stations where some of these have something, in the order of the trail. */
    static List<String> used(List<Traced.Part> parts) {
        List<String> used = new ArrayList<>(AMOUNTS.keySet());
        used.removeIf(station -> parts.stream().noneMatch(part -> of(part).containsKey(station)));
        return used;
    }

    /** The word of a kind of place, as in {@code on trees}. */
    static String word(String kind) {
        return switch (kind) {
            case "set-aside" -> "set aside";
            case "depot" -> "in depots";
            case "in-transit" -> "on the way";
            case "vehicle" -> "in vehicles";
            case "crew" -> "with crews";
            case "tree" -> "on trees";
            case "bag" -> "in waste bags";
            case "written-off" -> "written off";
            default -> kind;
        };
    }
}
