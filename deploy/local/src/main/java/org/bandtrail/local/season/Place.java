package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.kernel.Length;

/**
 * The invented place as its hand-written files describe it: depots, crews, sites and items.
 *
 * @param depots in file order
 * @param crews in file order
 * @param sites in file order
 * @param reelLengths the length of a new reel by material code
 */
record Place(List<Depot> depots, List<Crew> crews, List<Site> sites, Map<String, Length> reelLengths) {

    /** A depot and the person who keeps it. */
    record Depot(String depotId, String keeper) {}

    /** A crew, its people, and the way it writes lengths: mm, cm or ft-in. */
    record Crew(String crewId, String depotId, List<String> people, String lengths) {}

    /** A site, the crew that works there and how many trees it has. */
    record Site(String siteId, String crewId, int trees) {}

    /** Reads the folder {@code place} of the demo data. */
    static Place read(Path demoData) throws IOException {
        Path folder = demoData.resolve("place");
        List<Depot> depots = CsvRows.read(folder.resolve("depots.csv")).stream()
                .map(row -> new Depot(row.text("depotId"), row.text("keeper")))
                .toList();
        List<Crew> crews = CsvRows.read(folder.resolve("crews.csv")).stream()
                .map(row -> new Crew(row.text("crewId"), row.text("depotId"), row.words("people"), row.text("lengths")))
                .toList();
        List<Site> sites = CsvRows.read(folder.resolve("sites.csv")).stream()
                .map(row -> new Site(row.text("siteId"), row.text("crewId"), (int) row.number("trees")))
                .toList();
        Map<String, Length> reelLengths = new TreeMap<>();
        for (Row row : CsvRows.read(folder.resolve("items.csv"))) {
            if (row.has("reelLength")) {
                reelLengths.put(row.text("materialCode"), Length.parse(row.text("reelLength")));
            }
        }
        return new Place(depots, crews, sites, reelLengths);
    }

    /** How many crews draw on a depot. */
    int crewsOf(String depotId) {
        return (int)
                crews.stream().filter(crew -> crew.depotId().equals(depotId)).count();
    }
}
