package org.bandtrail.benchmark.cutting;

import org.bandtrail.siteinstalls.cuttingstock.CuttingPlan;

/**
 * What one job came to.
 *
 * @param test the job
 * @param firstFit what a person does by hand
 * @param plan the planner's plan
 * @param millis how long it took
 * @param general what the general solver says in the same time
 */
record Outcome(
        JobUnderTest test, FirstFitDecreasing firstFit, CuttingPlan plan, long millis, GeneralSolver.Answer general) {

    boolean worseThanFirstFit() {
        return plan.uncut().size() > firstFit.uncut()
                || plan.uncut().size() == firstFit.uncut() && plan.scrapMm() > firstFit.scrapMm();
    }

    boolean late() {
        return millis > JobUnderTest.LIMIT_SECONDS * 1000L;
    }

    String line() {
        return ("%-9s %5d pieces %4d part reels seed %d: %5d ms, scrap %6d (bound %6d, first fit %6d),"
                        + " new %3d (bound %3d, first fit %3d), general solver %s%s%s%s")
                .formatted(
                        test.cls(),
                        test.pieces(),
                        test.parts(),
                        test.seed(),
                        millis,
                        plan.scrapMm(),
                        plan.bound().weighedScrapMm(),
                        firstFit.scrapMm(),
                        plan.newReels(),
                        plan.bound().newReels(),
                        firstFit.newReels(),
                        general,
                        plan.proven() ? " proven" : " -",
                        plan.fewestNewReels() ? " fewest" : " -",
                        plan.cutOff() ? " cut off" : "");
    }
}
