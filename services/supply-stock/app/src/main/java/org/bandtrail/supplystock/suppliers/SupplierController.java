package org.bandtrail.supplystock.suppliers;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.items.Items;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Suppliers and their quotes over HTTP. */
@RestController
@Tag(name = "suppliers", description = "Who the programme buys from, and at what quoted prices")
final class SupplierController {
    private final Work work;
    private final Commands commands;
    private final Items items;
    private final Suppliers suppliers;
    private final Clock clock;

    SupplierController(Work work, Commands commands, Items items, Suppliers suppliers, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.items = items;
        this.suppliers = suppliers;
        this.clock = clock;
    }

    @PostMapping("/suppliers")
    @Operation(summary = "Register a supplier")
    Known register(@RequestBody Register request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new SupplierCommand.Register(
                    request.supplierId(), request.name(), by.id(), Occurred.at(clock.instant())));
            return new Known(request.supplierId());
        });
    }

    @PostMapping("/suppliers/{supplierId}/quotes")
    @Operation(summary = "Note a quote: order unit, contents, price breaks, pack, minimum, lead time, days it holds")
    Noted note(@PathVariable SupplierId supplierId, @RequestBody NoteQuote request, ActingPerson by) {
        return work.once(request.commandId(), List.of(supplierId.value(), request), Noted.class, () -> {
            Quote quote = request.quote(items.kindOf(request.materialCode()));
            int number = 0;
            Object answer = commands.ask(
                    new SupplierCommand.NoteQuote(supplierId, quote, by.id(), Occurred.at(clock.instant())));
            for (Object event : answer instanceof List<?> events ? events : List.of()) {
                number = event instanceof SupplierEvent.Quoted quoted ? quoted.number() : number;
            }
            return new Noted(supplierId, number);
        });
    }

    @PostMapping("/suppliers/{supplierId}/quotes/{quote}/withdraw")
    @Operation(summary = "Order no more by a quote, for a reason")
    Noted withdraw(
            @PathVariable SupplierId supplierId,
            @PathVariable int quote,
            @RequestBody Withdraw request,
            ActingPerson by) {
        return work.once(request.commandId(), List.of(supplierId.value(), quote, request), Noted.class, () -> {
            commands.send(new SupplierCommand.WithdrawQuote(
                    supplierId, quote, request.reason(), by.id(), Occurred.at(clock.instant())));
            return new Noted(supplierId, quote);
        });
    }

    @GetMapping("/suppliers")
    @Operation(summary = "Suppliers, a page at a time, by identity")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<SupplierRow> rows = suppliers.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().supplierId());
    }

    @GetMapping("/suppliers/{supplierId}")
    @Operation(summary = "One supplier with its quotes")
    SupplierRow.Whole one(@PathVariable SupplierId supplierId) {
        return suppliers
                .one(supplierId, today())
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Supplier [%s] is not registered.".formatted(supplierId)));
    }

    @GetMapping("/quotes")
    @Operation(summary = "What can be ordered of an item today, from any supplier")
    Quotes quotes(@RequestParam MaterialCode material) {
        return new Quotes(suppliers.quotesFor(material, today()), null);
    }

    private LocalDate today() {
        return clock.instant().atOffset(ZoneOffset.UTC).toLocalDate();
    }

    record Register(UUID commandId, SupplierId supplierId, String name) {}

    record NoteQuote(
            UUID commandId,
            MaterialCode materialCode,
            String unitCode,
            @Nullable String packageCode,
            @Nullable String content,
            @Nullable Long packUnits,
            @Nullable Long minimumUnits,
            int leadTimeDays,
            List<FromUnits> prices,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            @Nullable String reference) {
        Quote quote(MaterialKind kind) {
            Packing packing = Packing.of(kind, OrderUnit.onWire(unitCode, packageCode), content == null ? "" : content);
            List<PriceBreak> breaks = new ArrayList<>();
            String currency = "USD";
            Money first = null;
            for (FromUnits each : prices.stream()
                    .sorted(Comparator.comparingLong(FromUnits::fromUnits))
                    .toList()) {
                first = first == null ? Money.zero(each.unitPrice().currency()) : first;
                currency = first.plus(each.unitPrice()).currency(); // refuses a second currency, by name
                breaks.add(new PriceBreak(each.fromUnits(), each.unitPrice().minor()));
            }
            long pack = packUnits == null ? 1 : packUnits;
            return new Quote(
                    materialCode,
                    kind,
                    packing,
                    pack,
                    minimumUnits == null ? pack : minimumUnits,
                    leadTimeDays,
                    breaks,
                    currency,
                    validFrom,
                    validUntil,
                    reference == null ? "" : reference.strip());
        }
    }

    record FromUnits(long fromUnits, Money unitPrice) {}

    record Withdraw(UUID commandId, String reason) {}

    record Known(SupplierId supplierId) {}

    record Noted(SupplierId supplierId, int quote) {}

    record Rows(List<SupplierRow> rows, @Nullable String next) {}

    record Quotes(List<SupplierRow.Quoted> rows, @Nullable String next) {}
}
