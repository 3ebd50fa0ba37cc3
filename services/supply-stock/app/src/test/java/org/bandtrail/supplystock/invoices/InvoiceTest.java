package org.bandtrail.supplystock.invoices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.ANN;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.NOW;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.NO_SECOND;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.after;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.approve;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.document;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.hold;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.id;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.of;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.register;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.registered;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.settle;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.spread;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.usd;

import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.junit.jupiter.api.Test;

/** What comes in, once; what is held and why. Figures as in {@link InvoiceSamples}. */
class InvoiceTest {
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
    void sums_that_do_not_come_out_hold_the_whole_until_somebody_accepts_them() {
        Invoice held = registered(document(List.of("The payable sum says USD 455.36; reckoned again it is USD 1.")));

        assertThatExceptionOfType(InvoiceRefused.InvoiceHeld.class)
                .isThrownBy(() -> held.decide(approve(ANN, NO_SECOND)))
                .withMessageContaining("reckoned again it is USD 1.");
        Invoice accepted = after(held, settle(null, Settlement.ACCEPTED, null, null));
        assertThat(accepted.decide(approve(ANN, NO_SECOND))).hasSize(1);
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
}
