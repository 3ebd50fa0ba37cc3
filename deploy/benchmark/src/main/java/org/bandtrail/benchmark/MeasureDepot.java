package org.bandtrail.benchmark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import org.bandtrail.local.House;
import org.bandtrail.local.LauncherOptions;
import org.bandtrail.local.Service;
import org.springframework.context.ApplicationContext;

/**
 * Fills a depot with 200,000 reels and 5 million moves and measures its pages; on the way, with a million moves, the audit
 * against a plain SQL sum; and at last 32 writers on one reel. Needs some gigabytes of disk and some minutes.
 */
public final class MeasureDepot {
    private static final int TURNS = 5;
    private static final int REELS_OF_A_MILLION = 1_000_000 / FullDepot.MOVES_A_REEL;
    private static final int REELS = 200_000;

    private MeasureDepot() {}

    /**
     * Measures everything and prints two tables.
     *
     * @param arguments how many reels, not below the 40,000 of a million moves; 200,000 if it is left out
     */
    public static void main(String[] arguments) throws Exception {
        int reels = arguments.length == 0 ? REELS : Math.max(REELS_OF_A_MILLION + 1, Integer.parseInt(arguments[0]));
        Path folder = Files.createTempDirectory("bandtrail-measure-depot");
        LauncherOptions options = LauncherOptions.parse(
                folder, "--empty", "--data", folder.resolve("data").toString(), "--ports", "0,0,0,0");
        try (House house = House.start(options, System.out::println)) {
            ApplicationContext supplyStock = house.context(Service.SUPPLY_STOCK);
            Browser browser = new Browser(house.at(Service.SUPPLY_STOCK), house.serviceKey());
            FullDepot depot = new FullDepot(supplyStock);
            depot.fill(1, REELS_OF_A_MILLION);
            System.out.println("| what | raw JDBC | ours | ours / raw, median | spread |");
            System.out.println("| --- | ---: | ---: | ---: | ---: |");
            System.out.println(
                    new AuditSpeed(supplyStock, browser).recounted(TURNS).row());
            System.out.println(new AuditSpeed(supplyStock, browser).kept(TURNS).row());
            depot.fill(REELS_OF_A_MILLION + 1, reels);
            new FullLedger(supplyStock).fill();
            System.out.println(
                    new AuditSpeed(supplyStock, browser).recounted(TURNS).row());
            System.out.printf(
                    "%n| page, %,d reels and %,d moves in one depot | median ms | slowest ms |%n| --- | ---: | ---: |%n",
                    reels, reels * FullDepot.MOVES_A_REEL);
            for (Map.Entry<String, String> page : PageSpeed.pages(reels).entrySet()) {
                System.out.println(new PageSpeed(browser).row(page.getKey(), page.getValue()));
            }
            ManyWriters writers = new ManyWriters(supplyStock);
            for (int round = 0; round < TURNS; round++) {
                System.out.println(writers.round());
            }
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }
}
