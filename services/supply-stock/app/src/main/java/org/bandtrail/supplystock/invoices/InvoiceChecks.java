package org.bandtrail.supplystock.invoices;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.bandtrail.supplystock.invoices.InvoiceEvent.ApprovedLine;
import org.bandtrail.supplystock.invoices.Standing.State;

/** Smaller rules of an invoice. */
final class InvoiceChecks {
    private InvoiceChecks() {}

    /** Whether fewer goods and less money are paid than billed. */
    static boolean lessThanBilled(Standing standing, InvoiceCommand.Settle wish) {
        LineLink link = standing.line().link();
        return link != null
                && wish.payQuantity() != null
                && wish.payNet() != null
                && wish.payNet().currency().equals(standing.line().net().currency())
                && wish.payQuantity() > 0
                && wish.payQuantity() < link.quantity()
                && wish.payNet().minor() >= 0
                && wish.payNet().minor() <= standing.line().net().minor();
    }

    /** Goods whose order nobody has named cannot be compared with anything. */
    static void everyLineIsKnown(InvoiceId id, List<Standing> payable) {
        List<String> unknown = payable.stream()
                .map(Standing::line)
                .filter(line -> line.use() == LineUse.GOODS && line.link() == null)
                .map(InvoiceLine::line)
                .toList();
        if (!unknown.isEmpty()) {
            throw new InvoiceRefused.LineNotOrdered(id, unknown);
        }
    }

    /** What is paid of a line. */
    static ApprovedLine approved(Standing standing) {
        InvoiceLine line = standing.line();
        LineLink link = line.link();
        LineLink paid = link == null || standing.payQuantity() == null
                ? link
                : new LineLink(link.purchase(), link.purchaseLine(), standing.payQuantity());
        return new ApprovedLine(
                line.line(),
                line.use(),
                paid,
                Objects.requireNonNullElse(standing.payNet(), line.net()),
                standing.state() == State.SETTLED ? standing.reason() : null);
    }

    /** What may be spread over goods: charges, tax, and lines that are freight or duty. Minor units. */
    static long spreadable(InvoiceDocument paper, Collection<Standing> lines) {
        long charges = paper.charges().stream()
                .mapToLong(charge -> charge.amount().minor())
                .sum();
        long ofLines = lines.stream()
                .map(Standing::line)
                .filter(line -> line.use() == LineUse.FREIGHT || line.use() == LineUse.DUTY)
                .mapToLong(line -> line.net().minor())
                .sum();
        return charges + ofLines + paper.tax().minor();
    }
}
