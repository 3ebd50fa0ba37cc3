package org.bandtrail.supplystock.invoices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.ANN;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.BEN;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.NOW;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.NO_SECOND;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.TAPE;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.after;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.approve;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.document;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.hold;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.id;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.registered;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.settle;
import static org.bandtrail.supplystock.invoices.InvoiceSamples.usd;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is paid, by whom and when. Figures as in {@link InvoiceSamples}, computed by hand. */
class InvoiceApprovalTest {
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
    void goods_without_an_order_line_are_not_approved_until_somebody_says_what_they_are() {
        Invoice unknown =
                after(registered(document(List.of())), new InvoiceCommand.Sort(id(), "2", LineUse.GOODS, ANN, NOW));
        assertThatExceptionOfType(InvoiceRefused.LineNotOrdered.class)
                .isThrownBy(() -> unknown.decide(approve(ANN, NO_SECOND)))
                .withMessageContaining("lines [2] name nothing that was ordered");

        Invoice freight = after(unknown, new InvoiceCommand.Sort(id(), "2", LineUse.FREIGHT, ANN, NOW));
        assertThat(freight.decide(approve(ANN, NO_SECOND))).hasSize(1);
    }
}
