package org.bandtrail.siteinstalls.cuttingstock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Single jobs, small enough to be planned by hand beside the check. */
class CuttingPlannerTest {

    @Test
    void a_last_piece_that_ends_with_the_reel_needs_no_cut() {
        // 1,000 = 400 + 3 + 597; no cut behind the last piece
        ReelCuts cuts = only(plan(new CuttingRules(3, 200, 0), List.of(part("a", 1000)), 400, 597));

        assertThat(cuts.bladeMm()).isEqualTo(3);
        assertThat(cuts.scrapMm()).isZero();
        assertThat(cuts.leftoverMm()).isZero();
    }

    @Test
    void the_blade_takes_what_is_left_when_that_is_less_than_an_allowance() {
        // 1,000 = 400 + 3 + 595 + 2
        ReelCuts cuts = only(plan(new CuttingRules(3, 200, 0), List.of(part("a", 1000)), 400, 595));

        assertThat(cuts.bladeMm()).isEqualTo(5);
        assertThat(cuts.scrapMm()).isZero();
    }

    @Test
    void a_rest_of_exactly_the_usable_length_goes_back() {
        // 1,000 = 797 + 3 + 200
        ReelCuts cuts = only(plan(new CuttingRules(3, 200, 0), List.of(part("a", 1000)), 797));

        assertThat(cuts.leftoverMm()).isEqualTo(200);
        assertThat(cuts.scrapMm()).isZero();
    }

    @Test
    void pieces_that_do_not_fit_by_a_blade_are_left_uncut_and_what_to_buy_is_said() {
        // 400 + 3 + 598 = 1,001
        CuttingPlan plan = plan(new CuttingRules(3, 200, 1000), List.of(part("a", 1000)), 400, 598, 1200);

        assertThat(plan.uncut()).hasSize(1);
        assertThat(plan.tooLong()).extracting(Piece::lengthMm).containsExactly(1200L);
        assertThat(plan.toBuy()).isEqualTo(new Purchase(1, 1000, 1, 1200));
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void a_depot_without_reels_says_what_to_buy() {
        CuttingPlan plan = plan(new CuttingRules(0, 200, 1000), List.of(), 600, 600, 300);

        assertThat(plan.reels()).isEmpty();
        assertThat(plan.tooLong()).hasSize(3);
        assertThat(plan.toBuy()).isEqualTo(new Purchase(2, 1000, 0, 0));
    }

    @Test
    void a_part_reel_is_used_before_an_equal_new_one() {
        CuttingPlan plan = plan(new CuttingRules(0, 100, 0), List.of(fresh("new", 1000), part("part", 1000)), 400);

        assertThat(only(plan).stockId()).isEqualTo("part");
    }

    @Test
    void the_reel_that_expires_first_is_used_first_and_then_the_one_bought_first() {
        LocalDate spring = LocalDate.of(2027, 3, 1);
        List<Stock> expiring = List.of(part("keeps", 1000, null, 1), part("spring", 1000, spring, 2));
        List<Stock> bought = List.of(part("later", 1000, spring, 9), part("earlier", 1000, spring, 2));

        assertThat(only(plan(new CuttingRules(0, 100, 0), expiring, 400)).stockId())
                .isEqualTo("spring");
        assertThat(only(plan(new CuttingRules(0, 100, 0), bought, 400)).stockId())
                .isEqualTo("earlier");
    }

    @Test
    void scrap_comes_before_closed_reels_unless_a_closed_reel_is_worth_it() {
        // from the part reel: 1,000 - 950 = 50 scrap; from the new one: 4,050 go back
        List<Stock> stock = List.of(part("part", 1000), fresh("new", 5000));

        assertThat(only(plan(new CuttingRules(0, 100, 0), stock, 950)).stockId())
                .isEqualTo("new");
        assertThat(only(plan(new CuttingRules(0, 100, 0, 100), stock, 950)).stockId())
                .isEqualTo("part");
    }

    @Test
    void leftovers_are_kept_together() {
        // both pieces from one reel leave 1,000 and 200; one from each would leave 600 twice, with no less scrap
        List<Stock> stock = List.of(part("a", 1000), part("b", 1000));
        CuttingPlan plan = plan(new CuttingRules(0, 100, 0), stock, 400, 400);

        assertThat(only(plan).leftoverMm()).isEqualTo(200);
    }

    @Test
    void a_plan_is_there_when_patience_ends_at_once_and_says_that_it_was_cut_off() {
        AtomicLong nanos = new AtomicLong();
        CuttingPlan plan = CuttingPlanner.plan(
                Classic.file("PM_u120_01.txt"), Patience.of(() -> nanos.addAndGet(1_000_000), Duration.ofMillis(1)));

        assertThat(plan.uncut()).isEmpty();
        assertThat(plan.newReels()).isEqualTo(48);
        assertThat(plan.bound().weighedScrapMm()).isLessThanOrEqualTo(plan.scrapMm());
        assertThat(plan.cutOff()).isTrue();
    }

    /** The clock here runs only when it is looked at: what is counted is how often the search goes on after its end. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 100, 500, 2_000, 10_000, 30_000})
    void wherever_patience_ends_the_search_ends_within_a_few_more_looks(int looks) {
        AtomicLong nanos = new AtomicLong();
        CuttingJob job = mixed(80, 12);
        CuttingPlan plan = CuttingPlanner.plan(job, Patience.of(nanos::incrementAndGet, Duration.ofNanos(looks)));

        // what unwinds: a dive in a region, the region, the bettering, the search, each with a look or two
        assertThat(nanos.get()).isLessThan(looks + 40);
        assertThat(plan.uncut()).isEmpty();
        assertThat(plan.scrapMm()).isLessThanOrEqualTo(FirstFit.of(job).weighedScrapMm());
        assertThat(plan.bound().weighedScrapMm()).isLessThanOrEqualTo(plan.scrapMm());
    }

    /** Lengths by a fixed rule: pieces of 811 to 2,900 mm, part reels of 4,700 to 5,300 mm, no rest keeps. */
    private static CuttingJob mixed(int pieces, int parts) {
        List<Piece> wanted = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            wanted.add(new Piece("piece-" + i, 811 + i * 997 % 2_090));
        }
        List<Stock> stock = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            stock.add(i < parts ? part("reel-" + i, 4_700 + i * 331 % 601) : fresh("reel-" + i, 5_000));
        }
        return new CuttingJob(wanted, stock, new CuttingRules(0, CuttingJob.LONGEST_MM, 0), 1);
    }

    @Test
    void values_out_of_range_are_refused_by_name() {
        assertThatThrownBy(() -> new Piece("tree-7", 0)).hasMessageContainingAll("tree-7", "[0 mm]");
        assertThatThrownBy(() -> part("reel-9", 1_000_001)).hasMessageContainingAll("reel-9", "1000001");
        assertThatThrownBy(() -> new CuttingRules(-1, 0, 0)).hasMessageContaining("blade allowance is [-1 mm]");
        assertThatThrownBy(() -> plan(new CuttingRules(0, 0, 0), List.of(part("a", 9), part("a", 9)), 5))
                .hasMessageContaining("[a] stands twice among the reels");
    }

    private static CuttingPlan plan(CuttingRules rules, List<Stock> stock, long... lengths) {
        List<Piece> pieces = new ArrayList<>();
        for (long length : lengths) {
            pieces.add(new Piece("piece-" + pieces.size(), length));
        }
        return CuttingPlanner.plan(new CuttingJob(pieces, stock, rules, 1), Patience.endless());
    }

    private static ReelCuts only(CuttingPlan plan) {
        assertThat(plan.reels()).hasSize(1);
        return plan.reels().getFirst();
    }

    private static Stock part(String id, long lengthMm) {
        return part(id, lengthMm, null, 0);
    }

    private static Stock part(String id, long lengthMm, @Nullable LocalDate expires, long costOrder) {
        return new Stock(id, lengthMm, true, expires, costOrder);
    }

    private static Stock fresh(String id, long lengthMm) {
        return new Stock(id, lengthMm, false, null, 0);
    }
}
