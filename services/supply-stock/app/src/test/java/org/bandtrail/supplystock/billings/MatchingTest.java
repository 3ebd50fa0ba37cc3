package org.bandtrail.supplystock.billings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Ten reels of 45.720 m ordered at USD 48.50 each; eight came and were accepted. Figures computed by hand. */
class MatchingTest {
    private static final long REEL = 45_720;
    private static final OrderLineFigures ORDER = figures(8);
    private static final Tolerances POLICY = new Tolerances(5, 100, 5, 20, 5_00, 1_000_00);

    @Test
    void eight_reels_billed_at_the_orders_price_match() {
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL, 388_00)).verdict())
                .isEqualTo(Verdict.MATCHES);
    }

    @Test
    void the_price_may_differ_by_the_smaller_of_share_and_limit_and_by_no_cent_more() {
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL, 393_00)).verdict())
                .as("5.00 more; 20 per mille would be 7.76")
                .isEqualTo(Verdict.MATCHES);
        Matching.LineMatch dearer = match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL, 393_01));
        assertThat(dearer.verdict()).isEqualTo(Verdict.PRICE_DIFFERS);
        assertThat(dearer.sentence())
                .isEqualTo("Line 1 costs USD 393.01; by the order it would be USD 388.00, USD 5.01 less."
                        + " Accept it with a reason, or hold it.");
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(REEL, 49_47)).verdict())
                .as("0.97 more is 20 per mille of 48.50")
                .isEqualTo(Verdict.MATCHES);
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(REEL, 49_48)).verdict())
                .isEqualTo(Verdict.PRICE_DIFFERS);
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL, 382_99)).verdict())
                .as("cheaper is a difference too")
                .isEqualTo(Verdict.PRICE_DIFFERS);
    }

    @Test
    void what_was_billed_before_counts() {
        BilledSoFar five = new BilledSoFar(5 * REEL, 242_50, 242_50);

        assertThat(match(ORDER, five, bill(3 * REEL, 145_50)).verdict()).isEqualTo(Verdict.MATCHES);
        Matching.LineMatch tooMuch = match(ORDER, five, bill(4 * REEL, 194_00));
        assertThat(tooMuch.verdict()).isEqualTo(Verdict.MORE_THAN_RECEIVED);
        assertThat(tooMuch.sentence())
                .isEqualTo("Line 1 bills 182.880 m after 228.600 m before; 365.760 m was received."
                        + " Wait for the rest, pay what came, or hold the line.");
    }

    @Test
    void the_quantity_may_differ_by_the_smaller_of_share_and_limit() {
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL + 100, 388_00))
                        .verdict())
                .as("100 mm; 5 per mille would be 1.828 m")
                .isEqualTo(Verdict.MATCHES);
        assertThat(match(ORDER, BilledSoFar.NOTHING, bill(8 * REEL + 101, 388_00))
                        .verdict())
                .isEqualTo(Verdict.MORE_THAN_RECEIVED);
    }

    @Test
    void goods_that_did_not_come_or_are_not_accepted_are_not_paid() {
        assertThat(match(figures(0), BilledSoFar.NOTHING, bill(REEL, 48_50)).verdict())
                .isEqualTo(Verdict.NOTHING_RECEIVED);
        OrderLineFigures waiting = new OrderLineFigures(
                new SupplierId("S-1"),
                new PurchaseId("PO-7"),
                1,
                "TAPE-127",
                Measure.MILLIMETRES,
                REEL,
                "USD",
                10 * REEL,
                485_00,
                0,
                0,
                REEL);
        assertThat(match(waiting, BilledSoFar.NOTHING, bill(REEL, 48_50)).sentence())
                .contains("45.720 m came and nobody has accepted it yet");
    }

    @Test
    void goods_beyond_the_order_need_a_person_who_accepts_them() {
        OrderLineFigures twelve = figures(12);

        assertThat(match(twelve, BilledSoFar.NOTHING, bill(12 * REEL, 582_00)).verdict())
                .isEqualTo(Verdict.MORE_THAN_ORDERED);
        ToBill accepted = new ToBill("1", 1, 12 * REEL, usd(582_00), "needed on the ridge");
        assertThat(match(twelve, BilledSoFar.NOTHING, accepted).verdict()).isEqualTo(Verdict.MATCHES);
    }

    @Test
    void nothing_ordered_and_another_currency_are_told_apart() {
        assertThat(match(null, BilledSoFar.NOTHING, bill(REEL, 48_50)).verdict())
                .isEqualTo(Verdict.NOT_ORDERED);
        ToBill euros = new ToBill("1", 1, REEL, Money.of(48_50, "EUR"), null);
        assertThat(match(ORDER, BilledSoFar.NOTHING, euros).verdict()).isEqualTo(Verdict.OTHER_CURRENCY);
    }

    @Test
    void a_credit_takes_back_at_most_what_was_billed() {
        BilledSoFar two = new BilledSoFar(2 * REEL, 97_00, 97_00);

        assertThat(match(ORDER, two, bill(-2 * REEL, -97_00)).verdict()).isEqualTo(Verdict.MATCHES);
        assertThat(match(ORDER, two, bill(-2 * REEL - 1, -97_00)).verdict()).isEqualTo(Verdict.MORE_THAN_BILLED);
        assertThat(match(ORDER, two, bill(0, -97_00)).verdict())
                .as("price only")
                .isEqualTo(Verdict.MATCHES);
        assertThat(match(ORDER, two, bill(0, -97_01)).verdict()).isEqualTo(Verdict.MORE_THAN_BILLED);
    }

    @Test
    void one_wrong_line_refuses_the_whole_and_an_accepted_difference_is_kept_with_its_reason() {
        ToBill dear = new ToBill("2", 1, REEL, usd(60_00), null);
        BillingCommand.Bill both = billing(List.of(bill(REEL, 48_50), dear));
        assertThatExceptionOfType(BillingRefused.DoesNotMatch.class)
                .isThrownBy(() -> Billing.NOTHING.decide(both))
                .withMessageStartingWith("The invoice does not match order [PO-7]. Line 2 costs USD 60.00;");

        ToBill accepted = new ToBill("2", 1, REEL, usd(60_00), "price went up in May");
        var event = (BillingEvent.Billed) Billing.NOTHING
                .decide(billing(List.of(bill(REEL, 48_50), accepted)))
                .getFirst();
        assertThat(event.lines().get(1).difference()).isEqualTo(usd(11_50));
        assertThat(event.lines().get(1).verdict()).isEqualTo(Verdict.PRICE_DIFFERS);
        assertThat(event.lines().get(1).acceptedBecause()).isEqualTo("price went up in May");
    }

    private static Matching.LineMatch match(@Nullable OrderLineFigures order, BilledSoFar before, ToBill bill) {
        return Matching.of(order, before, bill, POLICY);
    }

    private static ToBill bill(long quantity, long minor) {
        return new ToBill("1", 1, quantity, usd(minor), null);
    }

    private static OrderLineFigures figures(int reels) {
        return new OrderLineFigures(
                new SupplierId("S-1"),
                new PurchaseId("PO-7"),
                1,
                "TAPE-127",
                Measure.MILLIMETRES,
                REEL,
                "USD",
                10 * REEL,
                485_00,
                reels * REEL,
                reels * 48_50L,
                0);
    }

    private static BillingCommand.Bill billing(List<ToBill> lines) {
        return new BillingCommand.Bill(
                new PurchaseId("PO-7"),
                "INV-1",
                List.of(ORDER),
                lines,
                POLICY,
                new PersonId("P-FIN"),
                Occurred.at(Instant.parse("2026-05-20T10:00:00Z")));
    }

    private static Money usd(long minor) {
        return Money.of(minor, "USD");
    }
}
