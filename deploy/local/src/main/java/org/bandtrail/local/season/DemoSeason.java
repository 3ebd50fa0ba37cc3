package org.bandtrail.local.season;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.Hearing;
import org.bandtrail.local.doors.SeasonStopped;
import org.bandtrail.local.office.Office;

/**
 * Loads the demo season through the services' front doors, in the order in which depots and crews would have sent it.
 * Every command's identity comes from its row, so loading again, or going on after an interruption, does each thing
 * once. Facts wait for the facts they build on: a day's visits until inspections has heard of that day's bands, a
 * return until supply-stock has heard what was used.
 */
public final class DemoSeason {
    /** The lead of the invented programme, who sets the place up and reads the audit. */
    private static final String LEAD = "P-18";

    private static final Duration PROJECTING = Duration.ofMinutes(1);

    private final Path demoData;
    private final Doors doors;
    private final Hearing hearing = new Hearing(LEAD);

    /**
     * A season to be loaded.
     *
     * @param demoData the folder {@code demo-data}
     * @param supplyStock base address of that service, without a slash at the end; the others likewise
     * @param frontDesk base address of the web pages, only asked whether it is well
     * @param serviceKey the key the services share
     */
    public DemoSeason(
            Path demoData, URI supplyStock, URI siteInstalls, URI inspections, URI frontDesk, String serviceKey) {
        this.demoData = demoData;
        this.doors = Doors.at(supplyStock, siteInstalls, inspections, frontDesk, serviceKey);
    }

    /**
     * Loads everything and reads the audit.
     *
     * @return the sentence that says what the audit reads
     * @throws SeasonStopped naming file, row and what the service said; what was loaded stays loaded
     */
    public String load(Progress progress) {
        return load(progress, moment -> {});
    }

    /**
     * As {@link #load(Progress)}, and says before each day's facts what time it is then, for a house whose clock
     * follows the season.
     *
     * @param itIs told the moment at which the next facts reach the books
     */
    public String load(Progress progress, Consumer<Instant> itIs) {
        try {
            doors.all().forEach(door -> door.get("/actuator/health", LEAD, "before loading"));
            return loadFiles(progress, itIs);
        } catch (IOException unreadable) {
            throw new SeasonStopped("A file of the season cannot be read: " + unreadable, unreadable);
        }
    }

    private String loadFiles(Progress progress, Consumer<Instant> itIs) throws IOException {
        Path season = demoData.resolve("season");
        List<Chunk> chunks = Timeline.read(season);
        Office office = Office.read(
                demoData.resolve("office"), doors.supplyStock(), doors.siteInstalls(), () -> waitFor(Kind.FIT));
        int total = office.stillToDo()
                + chunks.stream().mapToInt(chunk -> chunk.rows().size()).sum();
        PlaceSender place = new PlaceSender(demoData, doors, LEAD);
        itIs.accept(DepotBodies.SET_UP);
        progress.at("items, depots, crews, sites", 0, total);
        place.sendPlace();
        progress.at("trees", 0, total);
        TreeIndex trees = place.sendTrees();
        FieldSender field = new FieldSender(season, doors, trees);
        TreeLookSender looks = new TreeLookSender(doors.siteInstalls(), trees);
        int done = 0;
        for (Chunk chunk : chunks) {
            progress.at(chunk.words(), done, total);
            waitFor(chunk.kind());
            done += office.doUntil(chunk.arrival(), itIs);
            itIs.accept(chunk.arrival());
            send(chunk, field, looks);
            done += chunk.rows().size();
        }
        progress.at("the services read each other", done, total);
        waitForAll();
        progress.at("the office finishes the season", done, total);
        office.doUntil(Instant.MAX, itIs);
        waitForAll();
        progress.at("done", total, total);
        return new AuditReading(doors.supplyStock(), LEAD, PROJECTING).sentence();
    }

    private void send(Chunk chunk, FieldSender field, TreeLookSender looks) {
        List<Row> rows = chunk.rows();
        DepotSender depot = new DepotSender(doors.supplyStock());
        switch (chunk.kind()) {
            case LOOK -> looks.looks(rows);
            case REEL -> depot.reels(rows);
            case BATCH -> depot.batches(rows);
            case HANDOUT -> depot.handouts(rows);
            case RETURN -> depot.returns(rows);
            case FIT -> field.fits(rows);
            case VISIT -> field.visits(rows);
            case TEARDOWN -> field.teardowns(rows);
            case OUTCOME -> field.outcomes(rows);
            case LOAD -> field.loads(rows);
        }
    }

    private void waitFor(Kind kind) {
        switch (kind) {
            case FIT -> {
                hearing.await(doors.siteInstalls(), doors.supplyStock());
                hearing.await(doors.siteInstalls(), doors.inspections());
            }
            case VISIT, TEARDOWN -> hearing.await(doors.inspections(), doors.siteInstalls());
            case RETURN -> {
                hearing.await(doors.supplyStock(), doors.siteInstalls());
                hearing.await(doors.supplyStock(), doors.inspections());
            }
            case LOOK, REEL, BATCH, HANDOUT, OUTCOME, LOAD -> {}
        }
    }

    private void waitForAll() {
        waitFor(Kind.FIT);
        waitFor(Kind.VISIT);
        waitFor(Kind.RETURN);
    }
}
