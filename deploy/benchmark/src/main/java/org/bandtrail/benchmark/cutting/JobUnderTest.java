package org.bandtrail.benchmark.cutting;

import java.time.Duration;
import java.util.function.LongSupplier;
import org.bandtrail.siteinstalls.cuttingstock.CuttingJob;
import org.bandtrail.siteinstalls.cuttingstock.CuttingPlan;
import org.bandtrail.siteinstalls.cuttingstock.CuttingPlanner;
import org.bandtrail.siteinstalls.cuttingstock.Patience;

/**
 * One job to measure.
 *
 * @param cls its class
 * @param pieces how many pieces
 * @param parts how many part reels
 * @param seed of the job and of the search
 */
record JobUnderTest(JobClass cls, int pieces, int parts, long seed) {
    /** How long a plan may take, in seconds. */
    static final int LIMIT_SECONDS = 3;

    CuttingJob job() {
        return cls.job(pieces, parts, seed);
    }

    static CuttingPlan plan(CuttingJob job, int seconds, LongSupplier nanos) {
        return CuttingPlanner.plan(job, Patience.of(nanos, Duration.ofSeconds(seconds)));
    }

    /**
     * Plans, and asks the general solver if there is one.
     *
     * @param nanos the clock that counts, see {@link MeasureCutting}
     */
    Outcome measure(LongSupplier nanos, GeneralSolver solver) {
        CuttingJob job = job();
        FirstFitDecreasing firstFit = FirstFitDecreasing.of(job);
        long start = nanos.getAsLong();
        CuttingPlan plan = plan(job, LIMIT_SECONDS, nanos);
        long millis = (nanos.getAsLong() - start) / 1_000_000;
        return new Outcome(this, firstFit, plan, millis, solver.solve(job, firstFit, LIMIT_SECONDS));
    }
}
