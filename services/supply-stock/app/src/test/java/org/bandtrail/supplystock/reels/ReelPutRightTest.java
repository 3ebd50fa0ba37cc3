package org.bandtrail.supplystock.reels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.reels.ReelSamples.*;
import static org.bandtrail.supplystock.reels.ReelShelfSamples.LOOSE;

import java.util.Map;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockRefused;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What was told wrong is put right by a further move, and only where books and field disagree. */
class ReelPutRightTest {
    private static final ReelId OTHER = new ReelId("R-0010");
    private static final Place MISSING = Place.missing(ANNA);
    private static final Place ON_TREE = Place.tree(TREE);

    @Test
    void a_piece_recorded_too_short_goes_up_the_tree_and_its_site_pays() {
        Reel reel = after(
                receive("50 m", 1800),
                handOut(ANNA),
                fit(ANNA, "1.25 m"),
                bringBack(ANNA, "47.5 m"),
                right(MISSING, ON_TREE, "1.25 m", null));

        assertThat(mm(reel, ON_TREE)).isEqualTo(2_500);
        assertThat(mm(reel, MISSING)).isZero();
        // 2.5 m of 50 m for 18.00 cost 0.90.
        assertThat(reel.holding().chargedTo()).containsExactly(Map.entry(Charge.site(SITE), 90L));
    }

    @Test
    void a_piece_told_twice_comes_off_the_tree_again_and_its_site_is_paid_back() {
        Reel reel = after(
                receive("50 m", 1800),
                handOut(ANNA),
                fit(ANNA, "1.25 m"),
                fit(ANNA, "1.25 m"),
                bringBack(ANNA, "48.75 m"),
                right(ON_TREE, MISSING, "1.25 m", null));

        assertThat(mm(reel, ON_TREE)).isEqualTo(1_250);
        assertThat(mm(reel, MISSING)).isZero();
        assertThat(reel.holding().charged()).isEqualTo(45);
    }

    @Test
    void what_turned_up_is_measured_and_put_back_and_the_rest_stays_missing() {
        Reel reel = after(
                receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "47 m"), right(MISSING, LOOSE, "2.9 m", null));

        assertThat(mm(reel, LOOSE)).isEqualTo(49_900);
        assertThat(mm(reel, MISSING)).isEqualTo(100);
        assertThat(reel.holding().charged()).isZero();
    }

    @Test
    void the_other_reel_that_is_still_out_gives_its_half_from_its_person() {
        Reel out = after(receive("50 m", 1800), handOut(ANNA), right(Place.crew(ANNA), ON_TREE, "1.25 m", OTHER));

        assertThat(mm(out, Place.crew(ANNA))).isEqualTo(48_750);
        assertThat(out.holding().charged()).isEqualTo(45);
    }

    @Test
    void where_all_agrees_nothing_is_put_right() {
        Reel reel = after(receive("50 m", 1800), handOut(ANNA));

        assertThatExceptionOfType(StockRefused.NotACorrection.class)
                .isThrownBy(() -> reel.decide(right(Place.crew(ANNA), ON_TREE, "1.25 m", null)));
    }

    @Test
    void not_more_is_put_right_than_is_amiss() {
        Reel twice = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "3 m"), bringBack(ANNA, "48 m"));
        assertThat(mm(twice, MISSING)).isEqualTo(-1_000);

        assertThat(twice.decide(right(ON_TREE, MISSING, "1 m", null))).hasSize(1);
        assertThatExceptionOfType(StockRefused.NotACorrection.class)
                .isThrownBy(() -> twice.decide(right(ON_TREE, MISSING, "1001 mm", null)));
        Reel missing = after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "47 m"));
        assertThatExceptionOfType(StockRefused.NotThere.class)
                .isThrownBy(() -> missing.decide(right(MISSING, LOOSE, "3001 mm", null)));
    }

    @Test
    void a_correction_needs_a_reason() {
        Reel reel = after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "47 m"));

        assertThatExceptionOfType(StockRefused.ReasonNeeded.class)
                .isThrownBy(() -> reel.decide(new ReelCommand.PutRight(
                        REEL, MISSING, LOOSE, Length.parse("1 m"), null, null, " ", KEEPER, NOW)));
    }

    private static ReelCommand right(Place source, Place target, String length, @Nullable ReelId other) {
        return new ReelCommand.PutRight(
                REEL, source, target, Length.parse(length), other, SITE, "read again", KEEPER, NOW);
    }
}
