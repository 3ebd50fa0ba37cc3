package org.bandtrail.frontdesk.trail;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Stock;
import org.bandtrail.frontdesk.wording.Figures;

/**
 * How much of one material, or of one reel, rests at each place along the trail.
 *
 * @param material tape, mesh or fastener: the colour and pattern of the drawing
 * @param name what the drawing is about, for its heading
 * @param stops the places in the order in which material passes them
 * @param inPieces whether the amounts are pieces; otherwise they are mm
 */
public record Flow(String material, String name, List<Stop> stops, boolean inPieces) {
    private static final List<Map.Entry<String, String>> PLACES = List.of(
            Map.entry("depot", "in depots"),
            Map.entry("crew", "with crews"),
            Map.entry("missing", "missing"),
            Map.entry("written-off", "written off"),
            Map.entry("tree", "on trees"),
            Map.entry("bag", "in waste bags"),
            Map.entry("disposed", "disposed"));

    /** The kinds of places in the order of the trail, with their words. */
    static final Map<String, String> KINDS = kinds();

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        PLACES.forEach(place -> kinds.put(place.getKey(), place.getValue()));
        return Collections.unmodifiableMap(kinds);
    }

    /**
     * One place on the way.
     *
     * @param amount what rests there; negative where the field took more than the books knew
     * @param lost whether this is material that left the trail: missing or written off
     */
    public record Stop(String key, String name, long amount, String link, boolean lost) {}

    /** What was received in all: the sum of what rests anywhere. */
    public long received() {
        return stops.stream().mapToLong(Stop::amount).sum();
    }

    /** An amount of this flow in words. */
    public String words(long amount, Figures figures) {
        return inPieces ? figures.pieces(amount) : figures.run(amount);
    }

    /** The stored value of an amount, for titles. */
    public String stored(long amount, Figures figures) {
        return inPieces ? figures.pieces(amount) : figures.stored(amount);
    }

    /** The amount at one stop. */
    public long at(String key) {
        return stops.stream()
                .filter(stop -> stop.key().equals(key))
                .mapToLong(Stop::amount)
                .sum();
    }

    static Flow of(String material, String name, Stock.Along along) {
        return of(
                material,
                name,
                material.equals("fastener"),
                List.of(
                        along.depot(),
                        along.crew(),
                        along.missing(),
                        along.writtenOff(),
                        along.tree(),
                        along.bag(),
                        along.disposed()));
    }

    /** The trail of one reel. */
    public static Flow of(Stock.Reel reel) {
        String kind = "MESH".equals(reel.kind()) ? "mesh" : "tape";
        return of(
                kind,
                reel.reelId(),
                false,
                List.of(
                        reel.inDepotMm(),
                        reel.withCrewMm(),
                        reel.missingMm(),
                        reel.writtenOffMm(),
                        reel.onTreeMm(),
                        reel.inBagMm(),
                        reel.disposedMm()));
    }

    /** The trail of one batch of fasteners. */
    public static Flow of(Stock.Batch batch) {
        return of(
                "fastener",
                batch.batchId(),
                true,
                List.of(
                        batch.inDepotPieces(),
                        batch.withCrewPieces(),
                        batch.missingPieces(),
                        batch.writtenOffPieces(),
                        batch.onTreePieces(),
                        batch.inBagPieces(),
                        batch.disposedPieces()));
    }

    private static Flow of(String material, String name, boolean inPieces, List<Long> amounts) {
        List<Stop> stops = java.util.stream.IntStream.range(0, PLACES.size())
                .mapToObj(index -> {
                    Map.Entry<String, String> place = PLACES.get(index);
                    boolean lost = index == 2 || index == 3;
                    String link = "/where?at=" + place.getKey();
                    return new Stop(place.getKey(), place.getValue(), amounts.get(index), link, lost);
                })
                .toList();
        return new Flow(material, name, stops, inPieces);
    }
}
