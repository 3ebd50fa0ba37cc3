package org.bandtrail.local.season;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.Hearing;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.node.ObjectNode;

/**
 * The whole job on an inventory nobody here wrote: its living trees of 2026 go in through the import, those thick
 * enough are banded as proposed, visited, renewed, taken down, the waste disposed of, the kit returned to the
 * millimetre; then the books must agree with the plan and the audit must read zero. Running it again does nothing
 * twice.
 */
public final class ForestInventoryRun {
    static final String SITE = "FP-SITE";
    static final String DEPOT = "FP-DEPOT";
    static final String CREW = "FP-CREW";
    static final String PERSON = "FP-P1";
    static final String KEEPER = "FP-P2";
    static final Instant DAY_1 = Instant.parse("2026-09-07T12:00:00Z");

    private final Path inventory;
    private final Doors doors;
    private final Consumer<String> say;
    private final Hearing hearing = new Hearing(KEEPER);

    /**
     * A run to be made.
     *
     * @param inventory the CSV file of the forest inventory
     * @param services base addresses of front-desk, supply-stock, site-installs, inspections, in this order
     * @param serviceKey the key the services share
     * @param say told each step in a sentence
     */
    public ForestInventoryRun(Path inventory, List<URI> services, String serviceKey, Consumer<String> say) {
        this.inventory = inventory;
        this.doors = Doors.at(services.get(1), services.get(2), services.get(3), services.get(0), serviceKey);
        this.say = say;
    }

    /** Takes the inventory, the data folder of the running house, and optionally its four ports. */
    public static void main(String... arguments) throws IOException {
        if (arguments.length < 2) {
            System.out.println("Usage: deploy/forest INVENTORY.csv [DATA-FOLDER [PORTS]]");
            System.exit(2);
        }
        String key = Files.readString(Path.of(arguments[1], "secrets", "service-key"))
                .strip();
        String ports = arguments.length > 2 ? arguments[2] : "8100,8101,8102,8103";
        List<URI> services = List.of(ports.split(",", -1)).stream()
                .map(port -> URI.create("http://127.0.0.1:" + port))
                .toList();
        try {
            new ForestInventoryRun(Path.of(arguments[0]), services, key, System.out::println).run();
        } catch (SeasonStopped reason) {
            System.out.println(reason.getMessage());
            System.exit(1);
        }
    }

    /**
     * Runs the job.
     *
     * @return the sentence that says what the audit reads
     * @throws SeasonStopped saying where services and plan disagree, or what a service refused
     * @throws IOException if the inventory cannot be read
     */
    public String run() throws IOException {
        ForestSupplies supplies = new ForestSupplies(doors.supplyStock());
        supplies.register();
        ForestTrees trees = new ForestTrees(inventory, doors.siteInstalls());
        Map<String, Long> girths = trees.bringIn();
        say.accept(girths.size() + " living trees are in, every girth pi times the diameter of the file.");
        ForestPlan plan = ForestPlan.of(trees.toBeBanded(), doors.siteInstalls());
        supplies.handOut(plan);
        hearing.await(doors.siteInstalls(), doors.supplyStock());
        say.accept("%d reels of tape, %d of mesh are handed out."
                .formatted(plan.tape().reels(), plan.mesh().reels()));
        ForestField field = new ForestField(doors, hearing);
        field.fit(plan.bands());
        field.look(plan.bands());
        field.takeDown(plan.bands());
        say.accept(plan.bands().size() + " bands were fitted, looked at twice and, but for some, taken down.");
        hearing.await(doors.supplyStock(), doors.siteInstalls());
        hearing.await(doors.supplyStock(), doors.inspections());
        supplies.takeBack(plan);
        supplies.compare(plan);
        say.accept("Every reel is where the plan says, to the millimetre.");
        String audit = new AuditReading(doors.supplyStock(), KEEPER, Duration.ofMinutes(1)).sentence();
        say.accept(audit);
        return audit;
    }

    /** A request body with an identity of its own, made from kind and key, for what has no time of its own. */
    static ObjectNode command(String kind, String key) {
        return Body.command("forest-" + kind, key, DAY_1);
    }

    /** As {@link #command}, for what happened at a time. */
    static ObjectNode fact(String kind, String key, Instant happened) {
        return Body.command("forest-" + kind, key, happened).put("happenedAt", happened.toString());
    }
}
