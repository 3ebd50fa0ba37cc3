package org.bandtrail.benchmark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.bandtrail.local.House;
import org.bandtrail.local.LauncherOptions;
import org.bandtrail.local.Service;
import org.springframework.context.ApplicationContext;

/** Starts a house on a data folder of its own, measures, prints the table of DEVELOPERS.md, and removes the folder. */
public final class Measure {
    private static final int TURNS = 5;

    private Measure() {}

    /**
     * Measures everything; takes a few minutes.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bandtrail-measure");
        LauncherOptions options = LauncherOptions.parse(
                folder, "--empty", "--data", folder.resolve("data").toString(), "--ports", "0,0,0,0");
        try (House house = House.start(options, System.out::println)) {
            ApplicationContext supplyStock = house.context(Service.SUPPLY_STOCK);
            CommandPath commands = new CommandPath(supplyStock);
            System.out.println("| what | raw JDBC | ours | ours / raw, median | spread |");
            System.out.println("| --- | ---: | ---: | ---: | ---: |");
            System.out.println(commands.measure(1, 2_000, TURNS).row());
            System.out.println(commands.measure(8, 1_000, TURNS).row());
            System.out.println(new ProjectorSpeed(supplyStock).measure(TURNS).row());
            System.out.println(new CrewSync(
                            house.at(Service.SITE_INSTALLS),
                            house.serviceKey(),
                            house.context(Service.SITE_INSTALLS).getBean(DataSource.class))
                    .measure(TURNS)
                    .row());
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }
}
