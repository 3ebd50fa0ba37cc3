package org.bandtrail.local.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.local.House;
import org.bandtrail.local.LauncherOptions;
import org.bandtrail.local.Service;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job, from the import to the audit, on an open forest inventory (COMPASS project, MIT; see
 * {@code src/test/resources/forest}), against a real house. Figures of the file counted by another program (Python's
 * csv and math): 410 living trees of 2026, 404 of them with a diameter; 206 with a girth of at least 479 mm, 228,821 mm
 * of girth together.
 */
class ForestInventoryJourney {
    private static final Path INVENTORY = Path.of("src/test/resources/forest/forest-plot-inventory.csv");

    @TempDir
    private Path folder;

    @Test
    void girths_of_the_file_are_pi_times_the_diameter() throws IOException {
        List<Long> girths = List.copyOf(ForestInventory.livingGirths(INVENTORY).values());

        assertThat(girths).hasSize(404);
        assertThat(girths.stream().mapToLong(Long::longValue).min()).hasValue(31);
        assertThat(girths.stream().mapToLong(Long::longValue).max()).hasValue(2592);
        List<Long> thick = girths.stream().filter(girth -> girth >= 479).toList();
        assertThat(thick).hasSize(206);
        assertThat(thick.stream().mapToLong(Long::longValue).sum()).isEqualTo(228_821);
    }

    @Test
    void the_whole_job_runs_on_its_living_trees_and_runs_once() throws IOException {
        LauncherOptions options = LauncherOptions.parse(
                folder, "--empty", "--data", folder.resolve("data").toString(), "--ports", "0,0,0,0");
        List<String> said = new ArrayList<>();
        try (House house = House.start(options, starting -> {})) {
            ForestInventoryRun run = new ForestInventoryRun(
                    INVENTORY,
                    List.of(
                            house.at(Service.FRONT_DESK),
                            house.at(Service.SUPPLY_STOCK),
                            house.at(Service.SITE_INSTALLS),
                            house.at(Service.INSPECTIONS)),
                    house.serviceKey(),
                    said::add);

            assertThat(run.run()).startsWith("The audit reads zero: ").contains(" 0 findings stand open");
            List<String> first = List.copyOf(said);
            said.clear();
            run.run();

            assertThat(said).isEqualTo(first);
            assertThat(first.getFirst()).startsWith("404 living trees are in");
            assertThat(first).anySatisfy(line -> assertThat(line).startsWith("206 bands were fitted"));
        }
    }
}
