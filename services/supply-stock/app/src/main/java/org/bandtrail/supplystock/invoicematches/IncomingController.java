package org.bandtrail.supplystock.invoicematches;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.invoicefiles.SupplierInvoice;
import org.bandtrail.supplystock.invoices.InvoiceCommand;
import org.bandtrail.supplystock.invoices.InvoiceDocument;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Invoices on their way in. */
@RestController
@Tag(name = "invoices", description = "Invoices and credit notes of suppliers")
final class IncomingController {
    private final Work work;
    private final Commands commands;
    private final Incoming incoming;
    private final OrderLines orderLines;
    private final Clock clock;

    IncomingController(Work work, Commands commands, Incoming incoming, OrderLines orderLines, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.incoming = incoming;
        this.orderLines = orderLines;
        this.clock = clock;
    }

    @PostMapping("/invoices/preview")
    @Operation(summary = "Look at a UBL 2.1 or CSV file, or at rows entered by hand; nothing is stored")
    Incoming.Preview preview(@RequestBody Look request) {
        SupplierInvoice document = incoming.read(request.content(), request.rows());
        return incoming.preview(document, request.source(), request.supplierId());
    }

    @PostMapping("/invoices")
    @Operation(summary = "Keep an invoice as it was shown; the same supplier, number and amount come in once")
    Kept keep(@RequestBody Keep request, ActingPerson by) {
        return work.once(request.commandId(), request, Kept.class, () -> {
            InvoiceDocument paper =
                    incoming.paper(request.document(), request.supplierId(), request.source(), request.lines());
            commands.send(new InvoiceCommand.Register(paper.id(), paper, by.id(), Occurred.at(clock.instant())));
            return new Kept(paper.id(), paper.payable(), paper.findings());
        });
    }

    @GetMapping("/invoices/order-lines")
    @Operation(summary = "Order lines of a supplier that an invoice may bill, newest order first")
    Rows orderLines(@RequestParam SupplierId supplier) {
        return new Rows(orderLines.of(supplier), null);
    }

    /**
     * @param content the file, Base64; or null if rows are given
     * @param rows rows with the columns of a CSV file; or null if a file is given
     */
    record Look(
            byte @Nullable [] content,
            @Nullable List<Map<String, String>> rows,
            String source,
            @Nullable SupplierId supplierId) {}

    /**
     * @param document as the preview showed it
     * @param lines what each line bills; null for what is most probable
     */
    record Keep(
            UUID commandId,
            SupplierId supplierId,
            SupplierInvoice document,
            String source,
            @Nullable List<Incoming.LineChoice> lines) {}

    record Kept(InvoiceId invoiceId, Money payable, List<String> findings) {}

    record Rows(List<OrderLineChoice> rows, @Nullable String next) {}
}
