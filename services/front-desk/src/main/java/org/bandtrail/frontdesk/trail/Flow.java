package org.bandtrail.frontdesk.trail;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
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
    private static final List<Station> STATIONS = List.of(
            new Station("set-aside", "set aside", false, true),
            new Station("depot", "in depots", false, false),
            new Station("in-transit", "on the way", false, true),
            new Station("vehicle", "in vehicles", false, true),
            new Station("crew", "with crews", false, false),
            new Station("slit", "slit", true, true),
            new Station("missing", "missing", true, true),
            new Station("written-off", "written off", true, true),
            new Station("tree", "on trees", false, false),
            new Station("bag", "in waste bags", false, false),
            new Station("disposed", "disposed", false, false));

    /** The kinds of places in the order of the trail, with their words. */
    static final Map<String, String> KINDS = kinds();

    private record Station(String key, String name, boolean lost, boolean seldom) {}

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        STATIONS.forEach(station -> kinds.put(station.key(), station.name()));
        return Collections.unmodifiableMap(kinds);
    }

    /**
     * One place on the way.
     *
     * @param amount what rests there; negative where the field took more than the books knew, or where slitting made
     *     more length than it took
     * @param lost whether this is material that left the trail: missing, written off or slit into other reels
     * @param seldom whether it is drawn only where there is something
     */
    public record Stop(String key, String name, long amount, String link, boolean lost, boolean seldom) {}

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
                        along.setAside(),
                        along.depot(),
                        along.transit(),
                        along.vehicle(),
                        along.crew(),
                        along.slit(),
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
                        reel.setAsideMm(),
                        reel.inDepotMm(),
                        reel.inTransitMm(),
                        reel.inVehicleMm(),
                        reel.withCrewMm(),
                        reel.slitMm(),
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
                        batch.setAsidePieces(),
                        batch.inDepotPieces(),
                        batch.inTransitPieces(),
                        batch.inVehiclePieces(),
                        batch.withCrewPieces(),
                        0L,
                        batch.missingPieces(),
                        batch.writtenOffPieces(),
                        batch.onTreePieces(),
                        batch.inBagPieces(),
                        batch.disposedPieces()));
    }

    private static Flow of(String material, String name, boolean inPieces, List<Long> amounts) {
        List<Stop> stops = IntStream.range(0, STATIONS.size())
                .mapToObj(index -> {
                    Station station = STATIONS.get(index);
                    String link = station.key().equals("slit") ? "/slittings" : "/where?at=" + station.key();
                    return new Stop(
                            station.key(), station.name(), amounts.get(index), link, station.lost(), station.seldom());
                })
                .toList();
        return new Flow(material, name, stops, inPieces);
    }
}
