package org.bandtrail.benchmark.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Solves one job with CP-SAT of OR-Tools and one thread: how many of each kind come off each reel, and what is gone
 * from each. Reads "seconds S", "rules BLADE USABLE WORTH", "reel LENGTH part|new" and "piece LENGTH", each on its own
 * line, lengths in mm; writes "proven|found|unknown VALUE BOUND" in mm of scrap (with it the worth of new reels
 * opened), or "none" and why where the platform has no native library.
 */
public final class GeneralSolverMain {
    private final CpModel model = new CpModel();
    private final TreeMap<Long, Long> kinds = new TreeMap<>();
    private final Map<Long, List<LinearArgument>> cut = new TreeMap<>();
    private final List<LinearArgument> gone = new ArrayList<>();
    private final List<String[]> reels = new ArrayList<>();
    private long seconds;
    private long blade;
    private long usable;
    private long worth;
    private @Nullable BoolVar openedBefore;

    private GeneralSolverMain() {}

    /** Reads, solves, writes; no arguments. */
    public static void main(String[] arguments) {
        // all is read first, so that who writes is not cut off
        List<String> lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII))
                .lines()
                .toList();
        try {
            Loader.loadNativeLibraries();
        } catch (RuntimeException | UnsatisfiedLinkError absent) {
            System.out.println("none " + absent.getMessage());
            return;
        }
        GeneralSolverMain main = new GeneralSolverMain();
        lines.forEach(line -> main.read(line.trim().split(" ")));
        System.out.println(main.solved());
    }

    private void read(String[] words) {
        switch (words[0]) {
            case "seconds" -> seconds = Long.parseLong(words[1]);
            case "rules" -> {
                blade = Long.parseLong(words[1]);
                usable = Math.max(1, Long.parseLong(words[2]));
                worth = Long.parseLong(words[3]);
            }
            case "reel" -> reels.add(words);
            case "piece" -> kinds.merge(Long.parseLong(words[1]) + blade, 1L, Long::sum);
            default -> throw new IllegalArgumentException("[%s] is no line of a job.".formatted(words[0]));
        }
    }

    private String solved() {
        reels.forEach(words -> reel(Long.parseLong(words[1]), words[2].equals("new")));
        long wanted = 0;
        for (Map.Entry<Long, Long> kind : kinds.entrySet()) {
            List<LinearArgument> everywhere = cut.getOrDefault(kind.getKey(), List.of());
            model.addEquality(LinearExpr.sum(everywhere.toArray(LinearArgument[]::new)), kind.getValue());
            wanted += kind.getKey() * kind.getValue();
        }
        model.minimize(LinearExpr.sum(gone.toArray(LinearArgument[]::new)));
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        long value = found ? Math.round(solver.objectiveValue()) - wanted : 0;
        long bound = Math.max(0, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6) - wanted);
        String word = !found ? "unknown" : status == CpSolverStatus.OPTIMAL ? "proven" : "found";
        return "%s %d %d".formatted(word, value, bound);
    }

    /** A piece weighs its length and the blade, and the reel holds one blade more: then the last cut counts rightly. */
    private void reel(long length, boolean fresh) {
        LinearExprBuilder weight = LinearExpr.newBuilder();
        for (Map.Entry<Long, Long> kind : kinds.entrySet()) {
            long most = Math.min(kind.getValue(), (length + blade) / kind.getKey());
            IntVar many = model.newIntVar(0, most, "");
            cut.computeIfAbsent(kind.getKey(), made -> new ArrayList<>()).add(many);
            weight.addTerm(many, kind.getKey());
        }
        BoolVar used = model.newBoolVar("");
        model.addLessOrEqual(weight, LinearExpr.term(used, length + blade));
        IntVar taken = model.newIntVar(0, length + blade, "");
        model.addGreaterOrEqual(taken, weight);
        if (length >= usable) {
            BoolVar keeps = model.newBoolVar("");
            model.addLessOrEqual(weight, length - usable).onlyEnforceIf(keeps);
            LinearArgument[] both = {used, keeps};
            model.addGreaterOrEqual(taken, LinearExpr.weightedSum(both, new long[] {length, -length}));
        } else {
            model.addGreaterOrEqual(taken, LinearExpr.term(used, length));
        }
        gone.add(taken);
        if (fresh) {
            gone.add(LinearExpr.term(used, worth));
            if (openedBefore != null) {
                // new reels are alike: opened in their order, so that equal plans are looked at once
                model.addLessOrEqual(used, openedBefore);
            }
            openedBefore = used;
        }
    }
}
