package org.bandtrail.siteinstalls.contacts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Contacts over HTTP. They are found from a consent; there is no list of all people. */
@RestController
@Tag(name = "contacts", description = "Who may give consent; erasable, and outside of all events")
final class ContactController {
    private final Work work;
    private final Contacts contacts;
    private final Clock clock;

    ContactController(Work work, Contacts contacts, Clock clock) {
        this.work = work;
        this.contacts = contacts;
        this.clock = clock;
    }

    @GetMapping("/consent-contacts/{contactId}")
    @Operation(summary = "One contact; empty texts once it is erased")
    Contact one(@PathVariable ContactId contactId) {
        return known(contactId);
    }

    @PostMapping("/consent-contacts/{contactId}")
    @Operation(summary = "Correct a contact", description = "An erased contact stays erased.")
    Kept correct(@PathVariable ContactId contactId, @Valid @RequestBody Correct request) {
        known(contactId);
        return work.once(request.commandId(), List.of(contactId.value(), request), Kept.class, () -> {
            contacts.keep(contactId, request.contact());
            return new Kept(contactId);
        });
    }

    @PostMapping("/consent-contacts/{contactId}/erase")
    @Operation(
            summary = "Erase a contact",
            description = "Name, phone, email and address are gone for good. The history of the consent stays whole.")
    Kept erase(@PathVariable ContactId contactId, @Valid @RequestBody Erase request) {
        known(contactId);
        return work.once(request.commandId(), List.of(contactId.value(), request), Kept.class, () -> {
            contacts.erase(contactId, clock.instant());
            return new Kept(contactId);
        });
    }

    private Contact known(ContactId contactId) {
        return contacts.find(contactId).orElseThrow(() -> new NoSuch("contact", contactId));
    }

    record Correct(@NotNull UUID commandId, @NotNull ContactDetails contact) {}

    record Erase(@NotNull UUID commandId) {}

    record Kept(ContactId contactId) {}
}
