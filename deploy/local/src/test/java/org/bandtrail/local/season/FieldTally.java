package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.bandtrail.kernel.Length;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What hangs on the trees and what went into bags by the end of the season, added up from the files alone: a plain map
 * of bands, no events, no moves, nothing of the services. A reel that was never bought counts too.
 */
final class FieldTally {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Length now on one band. */
    private final Map<String, Long> hanging = new HashMap<>();

    private long baggedMm;

    private FieldTally() {}

    /** The tally of {@code tape} or {@code mesh}. */
    static FieldTally of(String material, Path season) throws IOException {
        FieldTally tally = new FieldTally();
        for (Row fit : CsvRows.read(season.resolve("fits.csv"))) {
            tally.hanging.put(fit.text("bandId"), mm(fit, material + "Length"));
        }
        if (material.equals("mesh")) {
            tally.addDevices(season.resolveSibling("office").resolve("9-devices.jsonl"));
        }
        Map<String, Row> renewed = new HashMap<>();
        CsvRows.read(season.resolve("replacements.csv")).forEach(row -> renewed.put(row.text("visitId"), row));
        Set<String> seen = new HashSet<>();
        for (Row visit : visits(season)) {
            Row row = renewed.get(visit.text("visitId"));
            if (row != null && row.has(material + "Reel") && seen.add(visit.text("visitId"))) {
                tally.bag(tally.hanging.put(visit.text("bandId"), mm(row, material + "Length")));
            }
        }
        for (Row teardown : CsvRows.read(season.resolve("teardowns.csv"))) {
            Long length = tally.hanging.remove(teardown.text("bandId"));
            if (material.equals("tape") || teardown.text("mesh").equals("bag")) {
                tally.bag(length);
            }
        }
        return tally;
    }

    /** The trap and the burlap band that were tried: what goes round the trunk is of a reel of mesh or cloth. */
    private void addDevices(Path script) throws IOException {
        for (String line : Files.readAllLines(script)) {
            JsonNode step = line.startsWith("{") ? JSON.readTree(line) : JSON.createObjectNode();
            if (step.path("post").asString("").equals("/bands")) {
                JsonNode fit = step.path("body");
                hanging.put(
                        fit.path("bandId").asString(""),
                        Length.parse(fit.path("tape").path("length").asString(""))
                                .mm());
            }
        }
    }

    private static List<Row> visits(Path season) throws IOException {
        List<Row> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(season)) {
            for (Path file :
                    files.filter(path -> path.toString().contains("visits-")).toList()) {
                rows.addAll(CsvRows.read(file));
            }
        }
        rows.sort(Comparator.comparing(row -> row.text("happenedAt")));
        return rows;
    }

    private void bag(@Nullable Long length) {
        baggedMm += Objects.requireNonNull(length, "a band that was never fitted");
    }

    private static long mm(Row row, String column) {
        return Length.parse(row.text(column)).mm();
    }

    long onTreesMm() {
        return hanging.values().stream().mapToLong(Long::longValue).sum();
    }

    long baggedMm() {
        return baggedMm;
    }
}
