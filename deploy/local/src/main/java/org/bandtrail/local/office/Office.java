package org.bandtrail.local.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.bandtrail.local.doors.FrontDoor;

/** The steps of the office that are still to be done, in the order of their moments. */
public final class Office {
    private final Deque<OfficeStep> open;
    private final FrontDoor supplyStock;
    private final FrontDoor siteInstalls;
    private final Runnable heard;
    private boolean booksMoved = true;

    private Office(List<OfficeStep> steps, FrontDoor supplyStock, FrontDoor siteInstalls, Runnable heard) {
        this.open = new ArrayDeque<>(steps);
        this.supplyStock = supplyStock;
        this.siteInstalls = siteInstalls;
        this.heard = heard;
    }

    /**
     * Reads every {@code .jsonl} file of a folder; blank lines and lines that begin with # say nothing.
     *
     * @param folder for example {@code demo-data/office}; a missing folder is an office that does nothing
     * @param heard waits until site-installs has heard of everything in supply-stock; called before a step at
     *     site-installs if supply-stock was written to before, because plans are made from what lies in the depots
     * @throws org.bandtrail.local.doors.SeasonStopped naming file and line of what cannot be read
     */
    public static Office read(Path folder, FrontDoor supplyStock, FrontDoor siteInstalls, Runnable heard)
            throws IOException {
        List<OfficeStep> steps = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(Office::isScript).sorted().toList()) {
                    readInto(steps, file);
                }
            }
        }
        steps.sort(Comparator.comparing(OfficeStep::at)); // stable: lines of one moment keep their order
        return new Office(steps, supplyStock, siteInstalls, heard);
    }

    private static boolean isScript(Path file) {
        return String.valueOf(file.getFileName()).endsWith(".jsonl");
    }

    private static void readInto(List<OfficeStep> steps, Path file) throws IOException {
        int number = 0;
        for (String line : Files.readAllLines(file)) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                steps.add(OfficeStep.read(file, number, line));
            }
        }
    }

    /** How many steps are still to be done. */
    public int stillToDo() {
        return open.size();
    }

    /**
     * Does every step that comes before a moment, each answered only when the lists show it, because the next may build
     * on it.
     *
     * @param moment up to which; a step of the same moment waits
     * @param itIs told the moment of each step before it is sent
     * @return how many were done
     * @throws org.bandtrail.local.doors.SeasonStopped if a step is refused, naming file, line and the answer
     */
    public int doUntil(Instant moment, Consumer<Instant> itIs) {
        int done = 0;
        while (!open.isEmpty() && open.peek().at().isBefore(moment)) {
            OfficeStep step = open.remove();
            itIs.accept(step.at());
            String origin = "%s (%s)".formatted(step.origin(), step.does());
            FrontDoor door = doorOf(step);
            if (step.put()) {
                door.put(step.path(), step.body(), step.by(), origin);
            } else {
                door.postAndSee(step.path(), step.body(), step.by(), origin);
            }
            done++;
        }
        return done;
    }

    private FrontDoor doorOf(OfficeStep step) {
        if (!step.atSiteInstalls()) {
            booksMoved = true;
            return supplyStock;
        }
        if (booksMoved) {
            heard.run();
            booksMoved = false;
        }
        return siteInstalls;
    }
}
