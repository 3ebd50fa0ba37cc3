package org.bandtrail.siteinstalls.consents;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.contacts.ContactDetails;
import org.bandtrail.siteinstalls.contacts.ContactId;
import org.bandtrail.siteinstalls.contacts.Contacts;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Entries about consents over HTTP. */
@RestController
@Tag(name = "consents", description = "What owners allow on their sites, and until when")
final class ConsentController {
    private final Work work;
    private final Commands commands;
    private final Contacts contacts;
    private final Clock clock;

    ConsentController(Work work, Commands commands, Contacts contacts, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.contacts = contacts;
        this.clock = clock;
    }

    @PostMapping("/consents")
    @Operation(
            summary = "Enter that an owner was asked",
            description = "contact holds name, phone, email and address; they are kept apart and can be erased.")
    Entered ask(@Valid @RequestBody ConsentRequests.Ask request, @Parameter(hidden = true) ActingPerson person) {
        return entered(request.commandId(), request, request.consent(), request.happenedAt(), when -> {
            keep(request.person(), request.contact());
            return new ConsentCommand.Ask(
                    request.consent(), request.siteId(), request.person(), request.scope(), person.id(), when);
        });
    }

    @PostMapping("/consents/give")
    @Operation(
            summary = "Enter that an owner said yes",
            description = "consentId names the question that is answered; without it a consent is entered unasked."
                    + " Without until it has no end.")
    Entered give(@Valid @RequestBody ConsentRequests.Give request, @Parameter(hidden = true) ActingPerson person) {
        return entered(request.commandId(), request, request.consent(), request.happenedAt(), when -> {
            keep(request.person(), request.contact());
            return new ConsentCommand.Give(
                    request.consent(),
                    request.siteId(),
                    request.person(),
                    request.scope(),
                    request.from(),
                    request.until(),
                    text(request.how()),
                    person.id(),
                    when);
        });
    }

    @PostMapping("/consents/{consentId}/decline")
    @Operation(summary = "Enter that an owner said no")
    Entered decline(
            @PathVariable ConsentId consentId,
            @Valid @RequestBody ConsentRequests.Decline request,
            @Parameter(hidden = true) ActingPerson person) {
        return entered(
                request.commandId(),
                List.of(consentId.value(), request),
                consentId,
                request.happenedAt(),
                when -> new ConsentCommand.Decline(consentId, text(request.reason()), person.id(), when));
    }

    @PostMapping("/consents/{consentId}/renew")
    @Operation(summary = "Give a consent a new last day", description = "Without until it has no end.")
    Entered renew(
            @PathVariable ConsentId consentId,
            @Valid @RequestBody ConsentRequests.Renew request,
            @Parameter(hidden = true) ActingPerson person) {
        return entered(
                request.commandId(),
                List.of(consentId.value(), request),
                consentId,
                request.happenedAt(),
                when -> new ConsentCommand.Renew(consentId, request.until(), text(request.how()), person.id(), when));
    }

    @PostMapping("/consents/{consentId}/withdraw")
    @Operation(summary = "Enter that an owner took a consent back, from the first day on which it no longer holds")
    Entered withdraw(
            @PathVariable ConsentId consentId,
            @Valid @RequestBody ConsentRequests.Withdraw request,
            @Parameter(hidden = true) ActingPerson person) {
        return entered(
                request.commandId(),
                List.of(consentId.value(), request),
                consentId,
                request.happenedAt(),
                when -> new ConsentCommand.Withdraw(
                        consentId, request.from(), text(request.reason()), person.id(), when));
    }

    private Entered entered(
            UUID commandId,
            Object content,
            ConsentId consentId,
            @Nullable Instant happenedAt,
            Function<Occurred, ConsentCommand> command) {
        return work.once(commandId, content, Entered.class, () -> {
            Instant now = clock.instant();
            commands.send(command.apply(new Occurred(Objects.requireNonNullElse(happenedAt, now), now)));
            return new Entered(consentId);
        });
    }

    private void keep(ContactId person, @Nullable ContactDetails details) {
        if (details != null) {
            contacts.keep(person, details);
        }
    }

    private static String text(@Nullable String given) {
        return Objects.requireNonNullElse(given, "");
    }

    record Entered(ConsentId consentId) {}
}
