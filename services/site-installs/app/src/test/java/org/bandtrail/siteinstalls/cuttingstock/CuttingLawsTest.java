package org.bandtrail.siteinstalls.cuttingstock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** What holds for every plan, over random jobs of up to 60 pieces and reels. */
class CuttingLawsTest {
    private static final int JOBS = 25;

    @Test
    void every_piece_is_cut_once_or_named_as_uncut() {
        check((job, plan) -> {
            List<Piece> all = new ArrayList<>(plan.uncut());
            all.addAll(plan.tooLong());
            plan.reels().forEach(cuts -> all.addAll(cuts.inOrder()));
            assertThat(all).containsExactlyInAnyOrderElementsOf(job.pieces());
        });
    }

    @Test
    void no_millimetre_is_used_twice_and_none_is_lost() {
        check((job, plan) -> {
            Set<String> used = new HashSet<>();
            for (ReelCuts cuts : plan.reels()) {
                assertThat(used.add(cuts.stockId())).isTrue();
                assertThat(cuts.piecesMm() + cuts.leftoverMm() + cuts.scrapMm() + cuts.bladeMm())
                        .isEqualTo(Objects.requireNonNull(lengths(job).get(cuts.stockId())));
            }
        });
    }

    @Test
    void a_rest_is_scrap_or_leftover_by_its_length_and_the_blade_takes_one_allowance_a_cut() {
        check((job, plan) -> {
            for (ReelCuts cuts : plan.reels()) {
                long blade = job.rules().bladeMm();
                int pieces = cuts.inOrder().size();
                assertThat(Math.min(cuts.leftoverMm(), cuts.scrapMm())).isZero();
                assertThat(cuts.scrapMm()).isLessThan(Math.max(1, job.rules().usableFromMm()));
                assertThat(cuts.leftoverMm() == 0
                                || cuts.leftoverMm() >= job.rules().usableFromMm())
                        .isTrue();
                assertThat(cuts.bladeMm()).isBetween((pieces - 1) * blade, pieces * blade);
                if (cuts.leftoverMm() + cuts.scrapMm() > 0) {
                    assertThat(cuts.bladeMm()).isEqualTo(pieces * blade);
                }
            }
        });
    }

    @Test
    void the_pieces_on_a_reel_are_in_the_order_of_the_walk() {
        check((job, plan) -> {
            for (ReelCuts cuts : plan.reels()) {
                assertThat(cuts.inOrder()).isSortedAccordingTo(Comparator.comparing(job.pieces()::indexOf));
            }
        });
    }

    @Test
    void no_plan_is_worse_than_first_fit_decreasing_and_no_bound_is_above_the_plan() {
        check((job, plan) -> {
            AllPlans.Value byHand = FirstFit.of(job);
            AllPlans.Value planned = new AllPlans.Value(
                    plan.uncut().size() + plan.tooLong().size(), plan.weighedScrapMm(), plan.newReels());
            assertThat(byHand.isBetterThan(planned)).isFalse();
            assertThat(plan.bound().uncut()).isLessThanOrEqualTo(plan.uncut().size());
            assertThat(plan.bound().weighedScrapMm()).isLessThanOrEqualTo(plan.weighedScrapMm());
            assertThat(plan.gapMm() == 0 || !plan.proven()).isTrue();
        });
    }

    @Test
    void what_is_to_buy_holds_what_was_left_uncut() {
        check((job, plan) -> {
            long missing = plan.uncut().size() + plan.tooLong().size();
            assertThat(plan.toBuy().nothing()).isEqualTo(missing == 0);
            long held = plan.toBuy().newReels()
                    * (plan.toBuy().newReelMm() + job.rules().bladeMm());
            long wanted = Stream.concat(plan.uncut().stream(), plan.tooLong().stream())
                    .filter(piece -> piece.lengthMm() <= job.rules().newReelMm())
                    .mapToLong(piece -> piece.lengthMm() + job.rules().bladeMm())
                    .sum();
            assertThat(held).isGreaterThanOrEqualTo(wanted);
        });
    }

    @Test
    void the_same_job_gets_the_same_plan() {
        check((job, plan) ->
                assertThat(CuttingPlanner.plan(job, Patience.endless())).isEqualTo(plan));
    }

    private static void check(Law law) {
        long steps = Histories.check(JOBS, 4_711, 40, RandomJobs::any, history -> {
            CuttingJob job = RandomJobs.job(history);
            law.check(job, CuttingPlanner.plan(job, Patience.endless()));
        });
        assertThat(steps).isGreaterThan(JOBS);
    }

    private static Map<String, Long> lengths(CuttingJob job) {
        return job.stock().stream().collect(Collectors.toMap(Stock::id, Stock::lengthMm));
    }

    /** What must hold for a job and its plan. */
    private interface Law {
        void check(CuttingJob job, CuttingPlan plan);
    }
}
