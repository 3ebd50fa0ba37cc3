package org.bandtrail.inspections.visits;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.bandtrail.eventstore.CommandReused;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandEvent;
import org.bandtrail.inspections.bands.BandFlag;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.duebands.VisitPolicies;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Puts visits on record, each once under its command id. */
@Component
final class VisitRecords {
    private final Work work;
    private final Bands bands;
    private final VisitPolicies policies;
    private final Clock clock;
    private final ObjectMapper json;

    VisitRecords(Work work, Bands bands, VisitPolicies policies, Clock clock, ObjectMapper json) {
        this.work = work;
        this.bands = bands;
        this.policies = policies;
        this.clock = clock;
        this.json = json;
    }

    /**
     * What became of one record.
     *
     * @param commandId the record's command, null if the record cannot be read
     * @param visitId the visit, null if the record names none
     * @param accepted false if it could not be read or its identity is taken; then nothing of it was kept
     * @param flags what to know about an accepted visit
     * @param problem why it was not accepted and what to do, else null
     */
    record Recorded(
            @Nullable UUID commandId,
            @Nullable String visitId,
            boolean accepted,
            List<String> flags,
            @Nullable String problem) {}

    /**
     * Records one visit.
     *
     * @throws Refusal if its identity is taken
     * @throws IllegalArgumentException if a value cannot be read
     */
    Recorded one(VisitRequest request, PersonId by) {
        VisitPolicies.Judge judge = policies.judge();
        Instant now = clock.instant();
        return work.once(request.commandId(), request, Recorded.class, () -> record(request, by, now, judge));
    }

    /** Records many in one transaction; what cannot be read or accepted is answered and the others are kept. */
    List<Recorded> many(List<JsonNode> requests, PersonId by) {
        VisitPolicies.Judge judge = policies.judge();
        Instant now = clock.instant();
        List<Told> read = requests.stream().map(this::read).toList();
        return work.inOneTransaction(() -> {
            work.claim(read.stream()
                    .map(Told::request)
                    .filter(Objects::nonNull)
                    .map(request -> new Work.Stamp(request.commandId(), request))
                    .toList());
            return read.stream().map(told -> oneOfMany(told, by, now, judge)).toList();
        });
    }

    /** A record of a delivery: what it says, or the answer that it cannot be read. */
    private record Told(
            @Nullable VisitRequest request, @Nullable Recorded unreadable) {}

    private Told read(JsonNode told) {
        try {
            return new Told(json.treeToValue(told, VisitRequest.class), null);
        } catch (JacksonException unreadable) {
            String visit = told.path("visitId").asStringOpt().orElse(null);
            String why = "This record cannot be read: " + unreadable.getOriginalMessage();
            return new Told(null, new Recorded(null, visit, false, List.of(), why));
        }
    }

    private Recorded oneOfMany(Told told, PersonId by, Instant now, VisitPolicies.Judge judge) {
        VisitRequest request = told.request();
        if (request == null) {
            return Objects.requireNonNull(told.unreadable());
        }
        try {
            return work.once(request.commandId(), request, Recorded.class, () -> {
                // The answer no is kept under the command id like every answer: the same request gets it again.
                try {
                    return record(request, by, now, judge);
                } catch (Refusal | IllegalArgumentException no) {
                    return notAccepted(request, no);
                }
            });
        } catch (CommandReused reused) {
            return notAccepted(request, reused);
        }
    }

    private Recorded record(VisitRequest request, PersonId by, Instant now, VisitPolicies.Judge judge) {
        List<BandEvent> events = bands.tell(request.command(by, now, judge.at(request.happenedAt())));
        Set<BandFlag> flags = events.isEmpty() || !(events.getFirst() instanceof BandEvent.Visited visited)
                ? Set.of()
                : visited.flags();
        List<String> spelt = flags.stream().map(BandFlag::spelt).sorted().toList();
        return new Recorded(request.commandId(), request.visitId(), true, spelt, null);
    }

    private static Recorded notAccepted(VisitRequest request, RuntimeException why) {
        return new Recorded(request.commandId(), request.visitId(), false, List.of(), why.getMessage());
    }
}
