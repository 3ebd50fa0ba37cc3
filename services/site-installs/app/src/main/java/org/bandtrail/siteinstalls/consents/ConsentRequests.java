package org.bandtrail.siteinstalls.consents;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.contacts.ContactDetails;
import org.bandtrail.siteinstalls.contacts.ContactId;
import org.jspecify.annotations.Nullable;

/** What comes in over HTTP about consents. */
final class ConsentRequests {
    private ConsentRequests() {}

    /** Without the dashes a command's UUID fits into an identity and names what the command makes. */
    private static String made(String prefix, UUID commandId) {
        return prefix + "-" + commandId.toString().replace("-", "");
    }

    record Ask(
            @NotNull UUID commandId,
            @Nullable ConsentId consentId,
            @NotNull SiteId siteId,
            @Nullable ContactId contactId,
            @Valid @Nullable ContactDetails contact,
            @NotNull List<Activity> activities,
            @Nullable List<String> pests,
            @Nullable String area,
            @Nullable Instant happenedAt) {
        ConsentId consent() {
            return Objects.requireNonNullElseGet(consentId, () -> new ConsentId(made("C", commandId)));
        }

        ContactId person() {
            return personOf(commandId, contactId, contact);
        }

        ConsentScope scope() {
            return scopeOf(activities, pests, area);
        }
    }

    record Give(
            @NotNull UUID commandId,
            @Nullable ConsentId consentId,
            @NotNull SiteId siteId,
            @Nullable ContactId contactId,
            @Valid @Nullable ContactDetails contact,
            @NotNull List<Activity> activities,
            @Nullable List<String> pests,
            @Nullable String area,
            @NotNull LocalDate from,
            @Nullable LocalDate until,
            @Nullable String how,
            @Nullable Instant happenedAt) {
        ConsentId consent() {
            return Objects.requireNonNullElseGet(consentId, () -> new ConsentId(made("C", commandId)));
        }

        ContactId person() {
            return personOf(commandId, contactId, contact);
        }

        ConsentScope scope() {
            return scopeOf(activities, pests, area);
        }
    }

    record Renew(
            @NotNull UUID commandId,
            @Nullable LocalDate until,
            @Nullable String how,
            @Nullable Instant happenedAt) {}

    record Decline(
            @NotNull UUID commandId,
            @Nullable String reason,
            @Nullable Instant happenedAt) {}

    record Withdraw(
            @NotNull UUID commandId,
            @NotNull LocalDate from,
            @Nullable String reason,
            @Nullable Instant happenedAt) {}

    record WarnDays(
            @NotNull UUID commandId,
            @NotNull LocalDate since,
            int days,
            @NotNull String source,
            @NotNull String reason) {}

    private static ContactId personOf(UUID commandId, @Nullable ContactId known, @Nullable ContactDetails details) {
        if (known == null && details == null) {
            throw new IllegalArgumentException(
                    "Neither contactId nor contact is given. Say who was asked, or who gives the consent.");
        }
        return known == null ? new ContactId(made("P", commandId)) : known;
    }

    private static ConsentScope scopeOf(
            List<Activity> activities, @Nullable List<String> pests, @Nullable String area) {
        return new ConsentScope(
                activities, Objects.requireNonNullElse(pests, List.of()), Objects.requireNonNullElse(area, ""));
    }
}
