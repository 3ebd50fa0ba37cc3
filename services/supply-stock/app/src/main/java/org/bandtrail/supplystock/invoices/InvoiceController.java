package org.bandtrail.supplystock.invoices;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The list of invoices, and what needs no match: hold, sort, withdraw. */
@RestController
@Tag(name = "invoices", description = "Invoices and credit notes of suppliers")
final class InvoiceController {
    private final Work work;
    private final Commands commands;
    private final Invoices invoices;
    private final Clock clock;

    InvoiceController(Work work, Commands commands, Invoices invoices, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.invoices = invoices;
        this.clock = clock;
    }

    @GetMapping("/invoices")
    @Operation(summary = "Invoices, newest first; state open is everything that waits for somebody")
    Rows list(
            @RequestParam(required = false) @Nullable String state,
            @RequestParam(required = false) @Nullable String supplier,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<InvoiceRow> rows = invoices.page(state, supplier, q, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().invoiceId());
    }

    @PostMapping("/invoices/{invoiceId}/hold")
    @Operation(summary = "Hold a line, or the whole invoice, back from payment")
    Done hold(@PathVariable InvoiceId invoiceId, @RequestBody Hold request, ActingPerson by) {
        return done(
                request.commandId(),
                invoiceId,
                request,
                new InvoiceCommand.Hold(
                        invoiceId, request.line(), request.reason(), by.id(), Occurred.at(clock.instant())));
    }

    @PostMapping("/invoices/{invoiceId}/sort")
    @Operation(summary = "Say what a line is that no order names: freight, duty or other")
    Done sort(@PathVariable InvoiceId invoiceId, @RequestBody Sort request, ActingPerson by) {
        return done(
                request.commandId(),
                invoiceId,
                request,
                new InvoiceCommand.Sort(
                        invoiceId, request.line(), request.use(), by.id(), Occurred.at(clock.instant())));
    }

    @PostMapping("/invoices/{invoiceId}/withdraw")
    @Operation(summary = "Take back an invoice that was registered by mistake")
    Done withdraw(@PathVariable InvoiceId invoiceId, @RequestBody Withdraw request, ActingPerson by) {
        return done(
                request.commandId(),
                invoiceId,
                request,
                new InvoiceCommand.Withdraw(invoiceId, request.reason(), by.id(), Occurred.at(clock.instant())));
    }

    private Done done(UUID commandId, InvoiceId invoice, Object request, InvoiceCommand command) {
        return work.once(commandId, List.of(invoice.value(), request), Done.class, () -> {
            commands.send(command);
            return new Done(invoice);
        });
    }

    record Hold(UUID commandId, @Nullable String line, String reason) {}

    record Sort(UUID commandId, String line, LineUse use) {}

    record Withdraw(UUID commandId, String reason) {}

    record Done(InvoiceId invoiceId) {}

    record Rows(List<InvoiceRow> rows, @Nullable String next) {}
}
