package org.bandtrail.supplystock.custody;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Custody and settlements over HTTP. */
@RestController
@Tag(name = "custody", description = "What people have in their care, at any moment, and what became of it")
final class CustodyController {
    private final CustodyReads reads;
    private final SettlementReads settlements;
    private final Clock clock;

    CustodyController(CustodyReads reads, SettlementReads settlements, Clock clock) {
        this.reads = reads;
        this.settlements = settlements;
        this.clock = clock;
    }

    @GetMapping("/custody")
    @Operation(summary = "What was in the care of a person or a crew at a moment, as the books knew it at another")
    Custody custody(
            @RequestParam(required = false) @Nullable PersonId person,
            @RequestParam(required = false) @Nullable CrewId crew,
            @RequestParam(required = false) @Nullable Instant at,
            @RequestParam(required = false) @Nullable Instant knownAt,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "100") int limit) {
        Instant now = clock.instant();
        Instant then = at == null ? now : at;
        Instant known = knownAt == null ? now : knownAt;
        List<String> people = new ArrayList<>();
        if (crew != null) {
            people.addAll(reads.peopleOf(crew.value(), then, known));
        }
        if (person != null) {
            people.retainAll(List.of(person.value()));
            if (crew == null) {
                people.add(person.value());
            }
        }
        boolean nobody = people.isEmpty() && (crew != null || person != null);
        int size = Math.clamp(limit, 1, 1000);
        List<CustodyRow> rows = nobody
                ? List.of()
                : at == null && knownAt == null
                        ? reads.now(people, after, size)
                        : reads.page(people, then, known, after, size);
        return new Custody(
                then,
                known,
                people,
                rows,
                rows.size() < size ? null : rows.getLast().key());
    }

    @GetMapping("/settlements")
    @Operation(summary = "What became of all that people took out in a time, by person and item")
    Settlements settlements(
            @RequestParam(required = false) @Nullable PersonId person,
            @RequestParam(required = false) @Nullable Instant from,
            @RequestParam(required = false) @Nullable Instant to) {
        Instant begin = from == null ? Instant.EPOCH : from;
        Instant end = to == null ? clock.instant() : to;
        return new Settlements(settlements.people(person == null ? null : person.value(), begin, end), null);
    }

    /** @param people who was asked about; empty for everybody */
    record Custody(
            Instant at,
            Instant knownAt,
            List<String> people,
            List<CustodyRow> rows,
            @Nullable String next) {}

    record Settlements(List<PersonSettled> rows, @Nullable String next) {}
}
