package org.bandtrail.supplystock.reels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.reels.ReelSamples.*;

import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReelTest {
    private static final Place WITH_ANNA = Place.crew(ANNA);
    private static final Place MISSING_FROM_ANNA = Place.missing(ANNA);

    @Nested
    class Wishes {
        @Test
        void a_reel_is_received_into_a_depot_with_its_cost() {
            Reel reel = after(receive("50 m", 1800));

            assertThat(mm(reel, Place.depot(DEPOT))).isEqualTo(50_000);
            assertThat(reel.holding().costInStock()).isEqualTo(1800);
        }

        @Test
        void receiving_the_same_label_twice_is_refused() {
            Reel reel = after(receive("50 m", 1800));

            assertThatExceptionOfType(ReelRefused.ReelAlreadyReceived.class)
                    .isThrownBy(() -> reel.decide(receive("30 m", 1000)))
                    .withMessage(
                            "Reel [R-0001] was received before with 50.000 m. Give the new reel a label of its own.");
        }

        @Test
        void a_reel_of_no_length_is_refused_and_one_of_a_millimetre_is_not() {
            assertThatExceptionOfType(ReelRefused.ReelWithoutLength.class)
                    .isThrownBy(() -> Reel.UNKNOWN.decide(receive("0 mm", 1800)));
            assertThat(Reel.UNKNOWN.decide(receive("1 mm", 1800))).hasSize(1);
        }

        @Test
        void fasteners_do_not_come_on_reels() {
            ReelCommand.Receive tape = receive("1 m", 1);
            var pins = new ReelCommand.Receive(
                    REEL, TAPE, MaterialKind.FASTENER, tape.length(), tape.cost(), Place.depot(DEPOT), KEEPER, NOW);
            assertThatExceptionOfType(ReelRefused.NotOnReels.class).isThrownBy(() -> Reel.UNKNOWN.decide(pins));
        }

        @Test
        void a_whole_reel_is_handed_out_and_then_not_a_second_time() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA));

            assertThat(mm(reel, WITH_ANNA)).isEqualTo(50_000);
            assertThatExceptionOfType(ReelRefused.ReelNotInDepot.class)
                    .isThrownBy(() -> reel.decide(handOut(BORIS)))
                    .withMessage("Reel [R-0001] is not in depot NORTH; the books have it at crew:P-07 with 50.000 m."
                            + " Hand out another reel, or enter its return first.");
        }
    }

    @Test
    void a_reel_that_came_from_the_field_without_a_receipt_is_not_handed_out() {
        assertThatExceptionOfType(ReelRefused.ReceiptMissing.class)
                .isThrownBy(() -> after(bringBack(BORIS, "10.913 m")).decide(handOut(ANNA)))
                .withMessageContaining("Receive it first");
    }

    @Nested
    class FieldFacts {
        @Test
        void a_fitted_piece_goes_from_the_crew_to_the_tree_and_its_site_pays() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "1.25 m"));

            assertThat(mm(reel, WITH_ANNA)).isEqualTo(48_750);
            assertThat(mm(reel, Place.tree(TREE))).isEqualTo(1_250);
            assertThat(reel.holding().chargedTo()).containsExactly(java.util.Map.entry(Charge.site(SITE), 45L));
        }

        @Test
        void more_than_the_books_know_is_accepted_and_leaves_a_deficit_with_the_person() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "50.001 m"));

            assertThat(mm(reel, WITH_ANNA)).isEqualTo(-1);
            assertThat(reel.holding().disagrees(WITH_ANNA)).isTrue();
            assertThat(reel.holding().costInStock()).isZero();
        }

        @Test
        void exactly_what_is_left_is_no_discrepancy() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "50 m"));

            assertThat(reel.holding().disagrees(WITH_ANNA)).isFalse();
        }

        @Test
        void a_reel_nobody_received_may_be_used_and_pays_its_sites_when_the_receipt_comes() {
            Reel used = after(fit(ANNA, "2 m"), fact(WITH_ANNA, Place.tree(TREE), "1 m", new SiteId("S-02")));
            assertThat(used.holding().charged()).isZero();

            Reel received = next(used, receive("10 m", 1000));

            assertThat(received.holding().chargedTo())
                    .containsExactly(java.util.Map.entry("site:S-01", 200L), java.util.Map.entry("site:S-02", 100L));
        }

        @Test
        void sound_mesh_goes_back_to_the_person_and_its_site_is_paid_back() {
            Reel reel = after(
                    receive("50 m", 1800),
                    handOut(ANNA),
                    fit(ANNA, "5 m"),
                    fact(Place.tree(TREE), WITH_ANNA, "5 m", SITE));

            assertThat(mm(reel, WITH_ANNA)).isEqualTo(50_000);
            assertThat(reel.holding().charged()).isZero();
        }

        @Test
        void taken_down_and_disposed_pieces_have_been_paid_for_already() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "5 m"), takeDown("5 m"), dispose("5 m"));

            assertThat(mm(reel, Place.disposed(LOAD))).isEqualTo(5_000);
            assertThat(reel.holding().charged()).isEqualTo(180);
        }

        @Test
        void a_piece_that_never_was_in_the_field_stops_the_feed() {
            assertThatExceptionOfType(IllegalStateException.class)
                    .isThrownBy(() -> Reel.UNKNOWN.decide(fact(Place.depot(DEPOT), Place.tree(TREE), "1 m", SITE)))
                    .withMessageContaining("no work of the field");
        }
    }

    @Nested
    class Returns {
        @Test
        void what_is_measured_goes_to_the_depot_and_the_rest_is_missing() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), fit(ANNA, "10 m"), bringBack(ANNA, "39.5 m"));

            assertThat(mm(reel, Place.depot(DEPOT))).isEqualTo(39_500);
            assertThat(mm(reel, MISSING_FROM_ANNA)).isEqualTo(500);
            assertThat(mm(reel, WITH_ANNA)).isZero();
        }

        @Test
        void a_late_fact_finds_what_was_missing() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "47 m"), fit(ANNA, "3 m"));

            assertThat(mm(reel, MISSING_FROM_ANNA)).isZero();
            assertThat(mm(reel, WITH_ANNA)).isZero();
        }

        @Test
        void more_than_was_handed_out_is_a_surplus_of_that_person() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "50.2 m"));

            assertThat(mm(reel, MISSING_FROM_ANNA)).isEqualTo(-200);
            assertThat(mm(reel, Place.depot(DEPOT))).isEqualTo(50_200);
        }

        @Test
        void an_empty_reel_brought_back_by_somebody_who_had_none_changes_nothing() {
            assertThat(after(receive("50 m", 1800)).decide(bringBack(BORIS, "0 mm")))
                    .isEmpty();
        }
    }

    @Nested
    class Settling {
        @Test
        void a_missing_length_is_written_off_with_its_cost() {
            Reel reel = after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "40 m"), settle(MISSING_FROM_ANNA));

            assertThat(mm(reel, Place.WRITTEN_OFF)).isEqualTo(10_000);
            assertThat(reel.holding().chargedTo()).containsExactly(java.util.Map.entry(Charge.WRITTEN_OFF, 360L));
        }

        @Test
        void a_surplus_was_found_and_costs_nothing() {
            Reel reel =
                    after(receive("50 m", 1800), handOut(ANNA), bringBack(ANNA, "50.2 m"), settle(MISSING_FROM_ANNA));

            assertThat(reel.holding().whereabouts().received()).isEqualTo(50_200);
            assertThat(reel.holding().costInStock()).isEqualTo(1800);
        }

        @Test
        void what_adds_up_cannot_be_settled() {
            assertThatExceptionOfType(ReelRefused.NothingToSettle.class)
                    .isThrownBy(
                            () -> after(receive("50 m", 1800), handOut(ANNA)).decide(settle(WITH_ANNA)));
        }
    }
}
