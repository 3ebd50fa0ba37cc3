package org.bandtrail.supplystock.invoicematches;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.invoices.InvoiceCommand;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.bandtrail.supplystock.invoices.InvoiceRow;
import org.bandtrail.supplystock.invoices.Invoices;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.invoices.LineUse;
import org.bandtrail.supplystock.invoices.Settlement;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** One invoice beside orders and deliveries: link, settle, approve. */
@RestController
@Tag(name = "invoices", description = "Invoices and credit notes of suppliers")
final class MatchController {
    private final Work work;
    private final Commands commands;
    private final Invoices invoices;
    private final Matches matches;
    private final Linking linking;
    private final Approvals approvals;
    private final Clock clock;

    MatchController(
            Work work,
            Commands commands,
            Invoices invoices,
            Matches matches,
            Linking linking,
            Approvals approvals,
            Clock clock) {
        this.work = work;
        this.commands = commands;
        this.invoices = invoices;
        this.matches = matches;
        this.linking = linking;
        this.approvals = approvals;
        this.clock = clock;
    }

    @GetMapping("/invoices/{invoiceId}")
    @Operation(summary = "One invoice: ordered, received and billed line by line, and what is wrong")
    One one(@PathVariable InvoiceId invoiceId) {
        InvoiceRow.Whole whole = whole(invoiceId);
        return new One(whole.invoice(), whole.lines(), matched(whole), whole.charges(), whole.history());
    }

    @PostMapping("/invoices/{invoiceId}/link")
    @Operation(summary = "Say which order line a line bills")
    Done link(@PathVariable InvoiceId invoiceId, @RequestBody Link request, ActingPerson by) {
        return work.once(request.commandId(), List.of(invoiceId.value(), request), Done.class, () -> {
            InvoiceRow.Whole whole = whole(invoiceId);
            InvoiceRow.Line line = line(whole, request.line());
            LineLink link = linking.link(
                    new Linking.Wish(
                            request.purchaseId(), request.purchaseLine(), request.priceOnly(), request.quantity()),
                    new SupplierId(whole.invoice().supplierId()),
                    new BigDecimal(line.quantity()),
                    line.unit(),
                    InvoiceKind.valueOf(whole.invoice().kind()).sign());
            commands.send(
                    new InvoiceCommand.Link(invoiceId, request.line(), link, by.id(), Occurred.at(clock.instant())));
            return new Done(invoiceId);
        });
    }

    @PostMapping("/invoices/{invoiceId}/settle")
    @Operation(summary = "End a dispute: pay as billed, pay only what came, or pay nothing of the line")
    Done settle(@PathVariable InvoiceId invoiceId, @RequestBody Settle request, ActingPerson by) {
        return work.once(request.commandId(), List.of(invoiceId.value(), request), Done.class, () -> {
            Paid paid = request.how() == Settlement.PAY_RECEIVED ? received(invoiceId, request.line()) : Paid.ALL;
            commands.send(new InvoiceCommand.Settle(
                    invoiceId,
                    request.line(),
                    request.how(),
                    paid.quantity(),
                    paid.net(),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Done(invoiceId);
        });
    }

    @PostMapping("/invoices/{invoiceId}/approve")
    @Operation(summary = "Approve for payment what waits; differences are carried to the goods")
    Approvals.Outcome approve(@PathVariable InvoiceId invoiceId, @RequestBody Approve request, ActingPerson by) {
        return work.once(
                request.commandId(),
                List.of(invoiceId.value(), request),
                Approvals.Outcome.class,
                () -> approvals.approve(invoiceId, by.id(), Occurred.at(clock.instant())));
    }

    /** What came and was not billed by others, at the billed price. */
    private Paid received(InvoiceId invoice, @Nullable String name) {
        InvoiceRow.Whole whole = whole(invoice);
        String asked = name == null ? "" : name;
        InvoiceRow.Line line = line(whole, asked);
        MatchedLine match = matched(whole).stream()
                .filter(each -> each.line().equals(asked))
                .findFirst()
                .orElseThrow(() -> new MatchRefused.AllOfItCame(asked));
        Long received = match.received();
        Long before = match.billedBefore();
        Long billed = line.linkQuantity();
        if (received == null || before == null || billed == null || received - before >= billed) {
            throw new MatchRefused.AllOfItCame(asked);
        }
        long quantity = Math.max(0, received - before);
        BigInteger exact = BigInteger.valueOf(line.net().minor()).multiply(BigInteger.valueOf(quantity));
        long net = new BigDecimal(exact)
                .divide(BigDecimal.valueOf(billed), 0, RoundingMode.HALF_UP)
                .longValueExact();
        return new Paid(quantity, Money.of(net, line.net().currency()));
    }

    private List<MatchedLine> matched(InvoiceRow.Whole whole) {
        return matches.of(
                whole.invoice().invoiceId(),
                whole.lines().stream().map(MatchController::toMatch).toList());
    }

    private static Matches.Line toMatch(InvoiceRow.Line line) {
        Long quantity = line.payQuantity() == null ? line.linkQuantity() : line.payQuantity();
        LineLink link = line.purchaseId() == null || line.purchaseLine() == null || quantity == null
                ? null
                : new LineLink(new PurchaseId(line.purchaseId()), line.purchaseLine(), quantity);
        return new Matches.Line(
                line.line(),
                LineUse.valueOf(line.use()),
                link,
                line.payNet() == null ? line.net() : line.payNet(),
                line.standing().equals("SETTLED") ? line.reason() : null,
                line.standing().equals("APPROVED"));
    }

    private InvoiceRow.Whole whole(InvoiceId invoice) {
        return invoices.whole(invoice).orElseThrow(() -> new NoSuch("invoice", invoice));
    }

    private static InvoiceRow.Line line(InvoiceRow.Whole whole, String name) {
        return whole.lines().stream()
                .filter(each -> each.line().equals(name))
                .findFirst()
                .orElseThrow(() -> new NoSuch("line", name));
    }

    private record Paid(@Nullable Long quantity, @Nullable Money net) {
        static final Paid ALL = new Paid(null, null);
    }

    record Link(
            UUID commandId,
            String line,
            PurchaseId purchaseId,
            int purchaseLine,
            boolean priceOnly,
            @Nullable String quantity) {}

    record Settle(UUID commandId, @Nullable String line, Settlement how, String reason) {}

    record Approve(UUID commandId) {}

    record Done(InvoiceId invoiceId) {}

    record One(
            InvoiceRow invoice,
            List<InvoiceRow.Line> lines,
            List<MatchedLine> matches,
            List<InvoiceRow.Charge> charges,
            List<InvoiceRow.Happened> history) {}
}
