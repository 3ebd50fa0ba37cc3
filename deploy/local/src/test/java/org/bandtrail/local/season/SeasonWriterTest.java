package org.bandtrail.local.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.bandtrail.kernel.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The season's files are the ones its writer writes, and they tell one consistent story. */
class SeasonWriterTest {
    private static final Path DEMO_DATA = Path.of("../../demo-data");
    private static final Path SEASON = DEMO_DATA.resolve("season");

    @TempDir
    private Path target;

    @Test
    void writing_again_gives_the_same_bytes_as_the_files_that_are_kept() throws IOException {
        SeasonWriter.write(DEMO_DATA, target);

        try (Stream<Path> written = Files.walk(target).filter(Files::isRegularFile)) {
            List<Path> files = written.toList();
            assertThat(files).hasSizeGreaterThan(15);
            for (Path file : files) {
                assertThat(file).hasSameBinaryContentAs(DEMO_DATA.resolve(target.relativize(file)));
            }
        }
    }

    @Test
    void the_files_stay_small() throws IOException {
        try (Stream<Path> files = Files.walk(DEMO_DATA).filter(Files::isRegularFile)) {
            assertThat(files.mapToLong(file -> file.toFile().length()).sum()).isBetween(400_000L, 3_000_000L);
        }
    }

    @Test
    void no_more_is_cut_from_a_reel_than_was_bought() throws IOException {
        Map<String, Long> left = new HashMap<>();
        for (Row reel : CsvRows.read(SEASON.resolve("reels.csv"))) {
            left.put(reel.text("reelId"), Length.parse(reel.text("length")).mm());
        }
        left.put(Mistakes.WRONG_NUMBER_REEL, Long.MAX_VALUE);
        for (String file : List.of("fits.csv", "replacements.csv")) {
            for (Row row : CsvRows.read(SEASON.resolve(file))) {
                if (row.has("tapeReel")) {
                    left.merge(
                            row.text("tapeReel"),
                            -Length.parse(row.text("tapeLength")).mm(),
                            Long::sum);
                }
            }
        }
        assertThat(left).allSatisfy((reel, mm) -> assertThat(mm).as(reel).isNotNegative());
    }

    @Test
    void every_teardown_and_visit_is_of_a_band_that_was_fitted() throws IOException {
        Set<String> fitted = new HashSet<>();
        CsvRows.read(SEASON.resolve("fits.csv")).forEach(row -> fitted.add(row.text("bandId")));
        Set<String> down = new HashSet<>();
        for (Row teardown : CsvRows.read(SEASON.resolve("teardowns.csv"))) {
            assertThat(down.add(teardown.text("bandId"))).as(teardown.place()).isTrue();
        }
        assertThat(fitted).hasSizeBetween(550, 700).containsAll(down);
        assertThat(fitted.size() - down.size()).isBetween(20, 60);
        try (Stream<Path> files = Files.list(SEASON)) {
            for (Path file :
                    files.filter(path -> path.toString().contains("visits-")).toList()) {
                assertThat(CsvRows.read(file))
                        .allSatisfy(row -> assertThat(fitted).contains(row.text("bandId")));
            }
        }
    }

    @Test
    void the_deliberate_mistakes_are_in_the_files() throws IOException {
        assertThat(Files.readString(SEASON.resolve("fits.csv"))).contains(Mistakes.WRONG_NUMBER_REEL);
        assertThat(Files.readString(SEASON.resolve("fits.csv"))).contains(Mistakes.SILENT_SENT_AT);
        assertThat(Files.readString(SEASON.resolve("bycatch.csv"))).containsOnlyOnce("REHAB-14");
        assertThat(Files.readString(SEASON.resolve("visits-2026-07.csv"))).containsOnlyOnce(",missing,");
        assertThat(Files.readString(DEMO_DATA.resolve("trees/girth-inches.csv")))
                .contains("S-02,T007,2.8,");
    }
}
