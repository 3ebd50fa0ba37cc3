package org.bandtrail.benchmark.cutting;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.bandtrail.siteinstalls.cuttingstock.CuttingJob;
import org.bandtrail.siteinstalls.cuttingstock.Piece;
import org.bandtrail.siteinstalls.cuttingstock.Stock;
import org.jspecify.annotations.Nullable;

/**
 * A general solver in a process of its own, so that its natives cannot harm the measurement and end with it. The job
 * goes in as lines ({@link GeneralSolverMain} says which), value and bound come out as one line.
 */
final class GeneralSolver {
    private boolean silent;

    /** {@code silent}: nothing is asked. */
    GeneralSolver(boolean silent) {
        this.silent = silent;
    }

    /**
     * Asks for the least scrap.
     *
     * @param firstFit so many new reels suffice, the others are left out to make the job smaller
     * @param seconds how long it may search, beyond starting up
     */
    Answer solve(CuttingJob job, FirstFitDecreasing firstFit, int seconds) {
        if (silent) {
            return new Answer(false, null, 0, false);
        }
        try {
            String line = answer(job, firstFit.newReels() + 3, seconds);
            String[] words = line.split(" ");
            if (words[0].equals("none")) {
                System.out.println("No general solver here: " + line.substring(5));
                silent = true;
                return new Answer(false, null, 0, false);
            }
            boolean found = !words[0].equals("unknown");
            Long value = found ? Long.valueOf(words[1]) : null;
            return new Answer(true, value, Long.parseLong(words[2]), words[0].equals("proven"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String answer(CuttingJob job, int newReels, int seconds) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process child = new ProcessBuilder(
                        java,
                        "-Xmx500m",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        GeneralSolverMain.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedWriter out = child.outputWriter(StandardCharsets.US_ASCII)) {
            out.write("seconds " + seconds + "\n");
            out.write("rules %d %d %d%n"
                    .formatted(
                            job.rules().bladeMm(),
                            job.rules().usableFromMm(),
                            job.rules().openingWorthMm()));
            int fresh = 0;
            for (Stock reel : job.stock()) {
                if (reel.opened() || fresh++ < newReels) {
                    out.write("reel %d %s%n".formatted(reel.lengthMm(), reel.opened() ? "part" : "new"));
                }
            }
            for (Piece piece : job.pieces()) {
                out.write("piece " + piece.lengthMm() + "\n");
            }
        }
        List<String> lines =
                child.inputReader(StandardCharsets.US_ASCII).lines().toList();
        if (lines.isEmpty()) {
            throw new IOException("The general solver ended without an answer.");
        }
        return lines.getLast();
    }

    /**
     * What it said.
     *
     * @param asked whether there was one to ask
     * @param value scrap of its plan in mm, null if it found no plan
     * @param bound no plan makes less scrap, in mm
     * @param proven whether it says so of its own plan
     */
    record Answer(boolean asked, @Nullable Long value, long bound, boolean proven) {

        /** Below 0 when its plan has less scrap than {@code scrapMm}, above when more; 0 when equal or without plan. */
        int compared(long scrapMm) {
            return value == null ? 0 : Long.compare(value, scrapMm);
        }

        @Override
        public String toString() {
            return !asked ? "not asked" : value == null ? "no plan" : value + (proven ? " proven" : " bound " + bound);
        }
    }
}
