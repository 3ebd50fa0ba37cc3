package org.bandtrail.benchmark.cutting;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;

/** Plans all jobs and prints the tables of DEVELOPERS.md. Some minutes; fewer with a number of jobs as argument. */
public final class MeasureCutting {
    private static final int JOBS = 200;
    private static final int[] PIECES = {50, 200, 1_000};
    private static final int[] PARTS = {10, 50, 200};

    private MeasureCutting() {}

    /**
     * Measures and prints.
     *
     * @param arguments how many jobs, all 200 if none is given; then "processor" if the time the processor worked for
     *     the plan is to count instead of the time on the wall, for a machine that others use, too; then "alone" if no
     *     general solver is to be asked
     */
    public static void main(String[] arguments) {
        int jobs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : JOBS;
        List<String> words = List.of(arguments);
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        LongSupplier nanos = words.contains("processor") ? threads::getCurrentThreadCpuTime : System::nanoTime;
        GeneralSolver solver = new GeneralSolver(words.contains("alone"));
        JobUnderTest.plan(new JobUnderTest(JobClass.TAPE, 50, 10, 0).job(), 2, nanos);
        List<Outcome> outcomes = new ArrayList<>();
        for (JobUnderTest test : tests(jobs)) {
            Outcome outcome = test.measure(nanos, solver);
            System.out.println(outcome.line());
            outcomes.add(outcome);
        }
        new CuttingTables(outcomes).print(System.out);
    }

    /** Every class with every size in turn, then the same again with the next seed. */
    private static List<JobUnderTest> tests(int jobs) {
        List<JobUnderTest> tests = new ArrayList<>();
        for (int seed = 1; tests.size() < jobs; seed++) {
            for (int pieces : PIECES) {
                for (int parts : PARTS) {
                    for (JobClass cls : JobClass.values()) {
                        if (tests.size() < jobs) {
                            tests.add(new JobUnderTest(cls, pieces, parts, seed));
                        }
                    }
                }
            }
        }
        return tests;
    }
}
