package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The season's rows, put into the order in which they reached the books. */
final class Timeline {
    private final Map<String, Chunk> chunks = new LinkedHashMap<>();

    private Timeline() {}

    /**
     * Reads the folder {@code season}, and what was seen at the trees beside it, and cuts both into chunks by day, kind
     * and crew, in time order.
     */
    static List<Chunk> read(Path folder) throws IOException {
        Timeline timeline = new Timeline();
        timeline.add(Kind.LOOK, folder.resolveSibling("trees").resolve("looked-at.csv"));
        timeline.add(Kind.REEL, folder.resolve("reels.csv"));
        timeline.add(Kind.BATCH, folder.resolve("batches.csv"));
        timeline.add(Kind.HANDOUT, folder.resolve("handouts.csv"));
        timeline.add(Kind.FIT, folder.resolve("fits.csv"));
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Timeline::holdsVisits).sorted().toList()) {
                timeline.add(Kind.VISIT, file);
            }
        }
        timeline.add(Kind.TEARDOWN, folder.resolve("teardowns.csv"));
        timeline.add(Kind.OUTCOME, folder.resolve("outcomes.csv"));
        timeline.add(Kind.RETURN, folder.resolve("returns.csv"));
        timeline.add(Kind.LOAD, folder.resolve("loads.csv"));
        return timeline.chunks.values().stream()
                .map(Timeline::inOrder)
                .sorted(Chunk.IN_TIME)
                .toList();
    }

    private static boolean holdsVisits(Path file) {
        return String.valueOf(file.getFileName()).startsWith("visits-");
    }

    private void add(Kind kind, Path file) throws IOException {
        for (Row row : CsvRows.read(file)) {
            LocalDate day = sentAt(row).atZone(ZoneOffset.UTC).toLocalDate();
            String crew = row.cells().containsKey("crewId") && kind != Kind.HANDOUT ? row.text("crewId") : "";
            chunks.computeIfAbsent(day + " " + kind + " " + crew, key -> new Chunk(day, kind, crew, new ArrayList<>()))
                    .rows()
                    .add(row);
        }
    }

    private static Chunk inOrder(Chunk chunk) {
        List<Row> rows = chunk.rows().stream()
                .sorted(Comparator.comparing(row -> Instant.parse(row.text("happenedAt"))))
                .toList();
        return new Chunk(chunk.day(), chunk.kind(), chunk.crewId(), rows);
    }

    private static Instant sentAt(Row row) {
        boolean late = row.cells().containsKey("sentAt") && row.has("sentAt");
        return Instant.parse(row.text(late ? "sentAt" : "happenedAt"));
    }
}
