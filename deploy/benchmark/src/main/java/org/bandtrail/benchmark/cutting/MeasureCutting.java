package org.bandtrail.benchmark.cutting;

import java.util.ArrayList;
import java.util.List;

/** Plans all jobs and prints the tables of DEVELOPERS.md. Some minutes; fewer with a number of jobs as argument. */
public final class MeasureCutting {
    private static final int JOBS = 200;
    private static final int[] PIECES = {50, 200, 1_000};
    private static final int[] PARTS = {10, 50, 200};

    private MeasureCutting() {}

    /**
     * Measures and prints.
     *
     * @param arguments how many jobs, all 200 if none is given
     */
    public static void main(String[] arguments) {
        int jobs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : JOBS;
        JobUnderTest.plan(new JobUnderTest(JobClass.TAPE, 50, 10, 0).job(), 2);
        List<Outcome> outcomes = new ArrayList<>();
        for (JobUnderTest test : tests(jobs)) {
            Outcome outcome = test.measure();
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
