package org.bandtrail.supplystock.reels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.reels.ReelSamples.*;
import static org.bandtrail.supplystock.reels.ReelShelfSamples.*;

import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.holdings.StockRefused;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What depots, vehicles and the books do with a reel that no crew has. */
class ReelOnShelfTest {
    @Nested
    class Moving {
        @Test
        void a_reel_in_a_bin_is_in_the_depot_and_can_be_handed_out() {
            Reel reel = after(receive("50 m", 1800), move(StockMove.PUT_IN_BIN, LOOSE, BIN, null));
            assertThat(mm(reel, BIN)).isEqualTo(50_000);

            assertThat(mm(next(reel, handOut(ANNA)), Place.crew(ANNA))).isEqualTo(50_000);
        }

        @Test
        void what_is_set_aside_is_not_handed_out_until_it_is_released() {
            Reel reel = after(receive("50 m", 1800), move(StockMove.SET_ASIDE, LOOSE, ASIDE, null));
            assertThatExceptionOfType(ReelRefused.ReelNotInDepot.class)
                    .isThrownBy(() -> reel.decide(handOut(ANNA)))
                    .withMessageContaining("set-aside:NORTH with 50.000 m");

            Reel released = next(reel, move(StockMove.RELEASED, ASIDE, BIN, null));
            assertThat(mm(next(released, handOut(ANNA)), Place.crew(ANNA))).isEqualTo(50_000);
        }

        @Test
        void a_transfer_that_arrives_short_leaves_the_gap_with_its_carrier() {
            Reel reel = after(receive("50 m", 1800), move(StockMove.SENT, LOOSE, ON_THE_WAY, null), arrive("49.2 m"));

            assertThat(mm(reel, BIN)).isEqualTo(49_200);
            assertThat(mm(reel, Place.missing(BORIS))).isEqualTo(800);
            assertThat(mm(reel, ON_THE_WAY)).isZero();
        }

        @Test
        void more_than_is_there_is_not_moved() {
            assertThatExceptionOfType(StockRefused.NotThere.class)
                    .isThrownBy(() -> after(receive("50 m", 1800), move(StockMove.LOADED, LOOSE, TRUCK, "50.001 m")))
                    .withMessageContaining("Reel [R-0001] cannot be moved by 50.001 m from depot:NORTH");
        }

        @Test
        void a_move_between_places_it_does_not_go_between_is_refused() {
            assertThatExceptionOfType(StockRefused.MoveUnfit.class)
                    .isThrownBy(() -> after(receive("50 m", 1800), move(StockMove.RELEASED, LOOSE, BIN, null)));
        }

        @Test
        void a_count_writes_off_what_is_short_and_enters_what_is_over() {
            Reel reel = after(receive("50 m", 1000), adjust(LOOSE, -5_000), adjust(LOOSE, 200));

            assertThat(mm(reel, LOOSE)).isEqualTo(45_200);
            assertThat(reel.holding().chargedTo()).containsEntry(Charge.WRITTEN_OFF, 100L);
        }
    }

    @Nested
    class ItsCost {
        @Test
        void an_invoice_difference_is_shared_between_what_was_used_and_what_is_left() {
            // A quarter is used, so a quarter of 2.00 more is charged to the site and the rest stays in stock.
            Reel reel = after(
                    receive("40 m", 1000),
                    handOut(ANNA),
                    fit(ANNA, "10 m"),
                    changeCost(CostChange.INVOICE_DIFFERENCE, 200));

            assertThat(reel.holding().chargedTo()).containsEntry(Charge.site(SITE), 300L);
            assertThat(reel.holding().costInStock()).isEqualTo(900);
            assertThat(next(reel, fit(ANNA, "30 m")).holding().costInStock()).isZero();
        }

        @Test
        void a_write_down_leaves_what_was_charged_and_lightens_what_is_left() {
            Reel reel = after(receive("40 m", 1000), handOut(ANNA), fit(ANNA, "10 m"), writeDown(600));

            assertThat(reel.holding().chargedTo())
                    .containsEntry(Charge.WRITTEN_DOWN, 600L)
                    .containsEntry(Charge.site(SITE), 250L);
            assertThat(reel.holding().costInStock()).isEqualTo(150);
            assertThat(next(reel, fit(ANNA, "10 m")).holding().chargedTo()).containsEntry(Charge.site(SITE), 300L);
        }

        @Test
        void what_goes_back_to_the_supplier_takes_its_cost_with_it() {
            Reel reel = after(receive("40 m", 1000), move(StockMove.SENT_BACK, LOOSE, Place.SUPPLIER, "10 m"));

            assertThat(reel.holding().bought()).isEqualTo(30_000);
            assertThat(reel.holding().costMinor()).isEqualTo(750);
            assertThat(reel.holding().charged()).isZero();
        }

        @Test
        void stock_never_costs_less_than_nothing() {
            assertThatExceptionOfType(StockRefused.CostBelowZero.class)
                    .isThrownBy(() -> after(receive("40 m", 1000), changeCost(CostChange.CREDIT, -1001)));
            assertThatExceptionOfType(StockRefused.WriteDownUnfit.class)
                    .isThrownBy(() -> after(receive("40 m", 1000), writeDown(1001)));
        }

        @Test
        void another_currency_is_refused_by_name() {
            var francs =
                    new ReelCommand.ChangeCost(REEL, CostChange.FREIGHT, Money.of(10, "CHF"), "INV-1", KEEPER, NOW);
            assertThatExceptionOfType(StockRefused.OtherCurrency.class)
                    .isThrownBy(() -> after(receive("40 m", 1000)).decide(francs))
                    .withMessageContaining("USD");
        }
    }

    @Nested
    class Slitting {
        @Test
        void a_wide_reel_pays_its_cost_into_the_slitting_and_the_strip_is_received_from_it() {
            Reel wide = after(receive("50 m", 1800), slit("50 m"));
            assertThat(wide.holding().chargedTo()).containsEntry("slit:S-1", 1800L);
            assertThat(mm(wide, Place.slit("S-1"))).isEqualTo(50_000);

            Reel strip = after(make("50 m", 600));
            assertThat(mm(strip, Place.slit("S-1"))).isEqualTo(-50_000);
            assertThat(strip.holding().whereabouts().received()).isEqualTo(50_000);
            assertThat(strip.holding().costInStock()).isEqualTo(600);
        }

        @Test
        void a_strip_is_used_at_its_share_of_the_cost() {
            Reel strip = after(make("50 m", 600), handOut(ANNA), fit(ANNA, "25 m"));
            assertThat(strip.holding().chargedTo()).containsEntry(Charge.site(SITE), 300L);
        }
    }
}
