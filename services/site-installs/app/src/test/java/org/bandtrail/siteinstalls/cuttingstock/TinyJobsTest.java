package org.bandtrail.siteinstalls.cuttingstock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** Every plan for a tiny job is the best there is, and its bound is no lie. */
class TinyJobsTest {

    @Test
    void no_plan_at_all_is_better_for_a_tiny_job() {
        AtomicInteger proven = new AtomicInteger();
        AtomicInteger compared = new AtomicInteger();

        Histories.check(120, 20_261_125, 10, RandomJobs::any, steps -> {
            CuttingJob job = RandomJobs.job(steps);
            if (Math.pow(job.stock().size() + 1.0, job.pieces().size()) > 100_000) {
                return;
            }
            CuttingPlan plan = CuttingPlanner.plan(job, Patience.endless());
            AllPlans.Value best = AllPlans.best(job);
            assertThat(new AllPlans.Value(
                            plan.uncut().size() + plan.tooLong().size(), plan.weighedScrapMm(), plan.newReels()))
                    .isEqualTo(best);
            assertThat(plan.bound().uncut() + plan.tooLong().size()).isLessThanOrEqualTo(best.uncut());
            assertThat(plan.bound().weighedScrapMm()).isLessThanOrEqualTo(best.weighedScrapMm());
            compared.incrementAndGet();
            proven.addAndGet(plan.proven() ? 1 : 0);
        });

        assertThat(compared.get()).isGreaterThan(80);
        assertThat(proven.get()).isGreaterThan(compared.get() / 2);
    }
}
