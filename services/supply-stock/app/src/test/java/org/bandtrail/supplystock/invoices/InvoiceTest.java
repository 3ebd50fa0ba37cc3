package org.bandtrail.supplystock.invoices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two lines of USD 388.00 and 18.00 with 6 % tax (23.28 and 1.08), freight 25.00: payable 455.36. By hand. */
class InvoiceTest {
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-20T10:00:00Z"));
    private static final PersonId ANN = new PersonId("P-ANN");
    private static final PersonId BEN = new PersonId("P-BEN");
    private static final LineLink TAPE = new LineLink(new PurchaseId("PO-7"), 1, 365_760);
    private static final LineLink PINS = new LineLink(new PurchaseId("PO-7"), 2, 1_440);
    private static final long NO_SECOND = 1_000_000_00;

    @Test
    void the_same_paper_comes_in_once_and_the_refusal_points_to_it() {
        Invoice kept = registered(document(List.of()));

        assertThatExceptionOfType(InvoiceRefused.InvoiceRegisteredBefore.class)
                .isThrownBy(() -> kept.decide(register(document(List.of()))))
                .withMessageContaining("Invoice [A-17] of this supplier with this amount came before, from a-17.xml")
                .withMessageContaining(id().value());
    }

    @Test
    void the_identity_leaves_case_blanks_and_dashes_aside_and_nothing_else() {
        Money payable = usd(455_36);

        assertThat(of("a 17", payable)).isEqualTo(of("A-17", payable));
        assertThat(of("A-18", payable)).isNotEqualTo(of("A-17", payable));
        assertThat(of("A-17", usd(455_37))).isNotEqualTo(of("A-17", payable));
        assertThat(InvoiceId.of(new SupplierId("OTHER"), InvoiceKind.INVOICE, "A-17", payable))
                .isNotEqualTo(of("A-17", payable));
        assertThat(InvoiceId.of(new SupplierId("REED"), InvoiceKind.CREDIT_NOTE, "A-17", payable))
                .isNotEqualTo(of("A-17", payable));
    }

    @Test
    void an_invoice_is_approved_for_what_is_payable() {
        var approved = (InvoiceEvent.Approved)
                registered(document(List.of())).decide(approve(ANN, NO_SECOND)).getFirst();

        assertThat(approved.toPay()).isEqualTo(usd(455_36));
        assertThat(approved.lines()).extracting(InvoiceEvent.ApprovedLine::line).containsExactly("1", "2");
        assertThat(approved.firstBy()).isNull();
    }

    @Test
    void from_a_sum_on_two_different_persons_approve() {
        Invoice kept = registered(document(List.of()));
        assertThat(kept.decide(approve(ANN, 455_37)).getFirst()).isInstanceOf(InvoiceEvent.Approved.class);

        Invoice once = after(kept, approve(ANN, 455_36));
        assertThat(once.firstBy()).isEqualTo(ANN);
        assertThatExceptionOfType(InvoiceRefused.SecondPersonNeeded.class)
                .isThrownBy(() -> once.decide(approve(ANN, 455_36)))
                .withMessageContaining("over USD 455.36 was approved by P-ANN already");
        var approved = (InvoiceEvent.Approved) once.decide(approve(BEN, 455_36)).getFirst();
        assertThat(approved.firstBy()).isEqualTo(ANN);
        assertThat(approved.by()).isEqualTo(BEN);
    }

    @Test
    void a_change_after_the_first_approval_takes_it_away() {
        Invoice once = after(registered(document(List.of())), approve(ANN, 0));
        Invoice changed = after(once, hold("2", "pins are the wrong length"));

        assertThat(changed.firstBy()).isNull();
        assertThat(changed.decide(approve(BEN, 0)).getFirst()).isInstanceOf(InvoiceEvent.ApprovedOnce.class);
    }

    @Test
    void a_held_line_waits_and_is_paid_later_with_its_tax() {
        Invoice held = after(registered(document(List.of())), hold("2", "pins are the wrong length"));
        var first = (InvoiceEvent.Approved) held.decide(approve(ANN, NO_SECOND)).getFirst();
        assertThat(first.toPay()).as("455.36 - 18.00 - 1.08").isEqualTo(usd(436_28));

        Invoice later = after(held.evolve(first), settle("2", Settlement.ACCEPTED, null, null));
        var second =
                (InvoiceEvent.Approved) later.decide(approve(ANN, NO_SECOND)).getFirst();
        assertThat(second.toPay()).isEqualTo(usd(19_08));
        assertThat(second.lines().getFirst().acceptedBecause()).isEqualTo("as agreed");
    }

    @Test
    void a_line_settled_as_not_paid_is_never_paid() {
        Invoice less = after(registered(document(List.of())), settle("1", Settlement.NOT_PAID, null, null));
        var approved =
                (InvoiceEvent.Approved) less.decide(approve(ANN, NO_SECOND)).getFirst();

        assertThat(approved.toPay()).as("455.36 - 388.00 - 23.28").isEqualTo(usd(44_08));
        assertThatExceptionOfType(InvoiceRefused.LineDone.class).isThrownBy(() -> less.decide(hold("1", "again")));
        assertThatExceptionOfType(InvoiceRefused.InvoiceDone.class)
                .isThrownBy(() -> less.evolve(approved).decide(approve(BEN, NO_SECOND)));
    }

    @Test
    void only_what_came_is_paid_and_tax_follows() {
        Invoice part =
                after(registered(document(List.of())), settle("1", Settlement.PAY_RECEIVED, 182_880L, usd(194_00)));
        var approved =
                (InvoiceEvent.Approved) part.decide(approve(ANN, NO_SECOND)).getFirst();

        assertThat(approved.toPay()).as("455.36 - 194.00 - 11.64").isEqualTo(usd(249_72));
        assertThat(approved.lines().getFirst().link()).isEqualTo(new LineLink(TAPE.purchase(), 1, 182_880));
        assertThatExceptionOfType(InvoiceRefused.NotLessThanBilled.class)
                .isThrownBy(() -> registered(document(List.of()))
                        .decide(settle("1", Settlement.PAY_RECEIVED, 365_760L, usd(388_00))));
    }

    @Test
    void sums_that_do_not_come_out_hold_the_whole_until_somebody_accepts_them() {
        Invoice held = registered(document(List.of("The payable sum says USD 455.36; reckoned again it is USD 1.")));

        assertThatExceptionOfType(InvoiceRefused.InvoiceHeld.class)
                .isThrownBy(() -> held.decide(approve(ANN, NO_SECOND)))
                .withMessageContaining("reckoned again it is USD 1.");
        Invoice accepted = after(held, settle(null, Settlement.ACCEPTED, null, null));
        assertThat(accepted.decide(approve(ANN, NO_SECOND))).hasSize(1);
    }

    @Test
    void goods_without_an_order_line_are_not_approved_until_somebody_says_what_they_are() {
        Invoice unknown =
                after(registered(document(List.of())), new InvoiceCommand.Sort(id(), "2", LineUse.GOODS, ANN, NOW));
        assertThatExceptionOfType(InvoiceRefused.LineNotOrdered.class)
                .isThrownBy(() -> unknown.decide(approve(ANN, NO_SECOND)))
                .withMessageContaining("lines [2] name nothing that was ordered");

        Invoice freight = after(unknown, new InvoiceCommand.Sort(id(), "2", LineUse.FREIGHT, ANN, NOW));
        assertThat(freight.decide(approve(ANN, NO_SECOND))).hasSize(1);
    }

    @Test
    void charges_and_tax_are_spread_at_most_once() {
        Invoice kept = registered(document(List.of()));
        Invoice spread = after(kept, spread(25_00));

        assertThat(spread.spreadMinor()).isEqualTo(25_00);
        assertThatExceptionOfType(InvoiceRefused.MoreThanCharged.class)
                .isThrownBy(() -> spread.decide(spread(24_37)))
                .withMessageContaining("charges of USD 24.36 left to spread, not USD 24.37");
        assertThat(spread.decide(spread(24_36))).hasSize(1);
    }

    @Test
    void a_withdrawn_paper_can_come_again_and_an_approved_one_cannot_be_withdrawn() {
        InvoiceCommand withdraw = new InvoiceCommand.Withdraw(id(), "wrong supplier", ANN, NOW);
        Invoice gone = after(registered(document(List.of())), withdraw);
        assertThat(gone.decide(register(document(List.of())))).hasSize(1);

        Invoice approved = after(registered(document(List.of())), approve(ANN, NO_SECOND));
        assertThatExceptionOfType(InvoiceRefused.InvoiceDone.class).isThrownBy(() -> approved.decide(withdraw));
        assertThatExceptionOfType(InvoiceRefused.InvoiceUnknown.class).isThrownBy(() -> gone.decide(withdraw));
    }

    @Test
    void decisions_need_a_reason_and_a_line_that_exists() {
        Invoice kept = registered(document(List.of()));

        assertThatExceptionOfType(InvoiceRefused.ReasonMissing.class).isThrownBy(() -> kept.decide(hold("1", " ")));
        assertThatExceptionOfType(InvoiceRefused.LineUnknown.class)
                .isThrownBy(() -> kept.decide(hold("9", "why")))
                .withMessageContaining("has no line [9]. Its lines are [1, 2].");
    }

    private static Invoice registered(InvoiceDocument document) {
        return after(Invoice.UNKNOWN, register(document));
    }

    private static Invoice after(Invoice invoice, InvoiceCommand command) {
        Invoice next = invoice;
        for (InvoiceEvent event : invoice.decide(command)) {
            next = next.evolve(event);
        }
        return next;
    }

    private static InvoiceCommand register(InvoiceDocument document) {
        return new InvoiceCommand.Register(id(), document, ANN, NOW);
    }

    private static InvoiceCommand approve(PersonId by, long secondPersonFromMinor) {
        return new InvoiceCommand.Approve(id(), secondPersonFromMinor, by, NOW);
    }

    private static InvoiceCommand hold(String line, String reason) {
        return new InvoiceCommand.Hold(id(), line, reason, ANN, NOW);
    }

    private static InvoiceCommand settle(
            @Nullable String line, Settlement how, @Nullable Long quantity, @Nullable Money net) {
        return new InvoiceCommand.Settle(id(), line, how, quantity, net, "as agreed", ANN, NOW);
    }

    private static InvoiceCommand spread(long minor) {
        return new InvoiceCommand.SpreadCharge(id(), "LC-1", usd(minor), ANN, NOW);
    }

    private static InvoiceDocument document(List<String> findings) {
        return new InvoiceDocument(
                new SupplierId("REED"),
                InvoiceKind.INVOICE,
                "A-17",
                LocalDate.parse("2026-05-19"),
                null,
                "USD",
                null,
                "PO-7",
                List.of(
                        line("1", "8", "XRL", "48.50", 388_00, 23_28, TAPE),
                        line("2", "1440", "C62", "0.0125", 18_00, 1_08, PINS)),
                List.of(new InvoiceDocument.Charge("Freight", usd(25_00))),
                usd(24_36),
                usd(455_36),
                findings,
                "a-17.xml");
    }

    private static InvoiceLine line(
            String line, String quantity, String unit, String price, long net, long tax, LineLink link) {
        return new InvoiceLine(
                line,
                "item " + line,
                null,
                quantity,
                unit,
                price,
                "1",
                usd(net),
                usd(net),
                usd(tax),
                LineUse.GOODS,
                link);
    }

    private static InvoiceId of(String number, Money payable) {
        return InvoiceId.of(new SupplierId("REED"), InvoiceKind.INVOICE, number, payable);
    }

    private static InvoiceId id() {
        return of("A-17", usd(455_36));
    }

    private static Money usd(long minor) {
        return Money.of(minor, "USD");
    }
}
