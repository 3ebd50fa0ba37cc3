package org.bandtrail.inspections.visits;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.inspections.visits.VisitRecords.Recorded;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Visits over HTTP. A visit is a fact: whatever it contradicts, it is kept and answered with flags. */
@RestController
@Tag(name = "visits", description = "Looks at bands: catch, wildlife, guard, and what was renewed")
final class VisitController {
    private static final int MOST_RECORDS = 2_000;
    private final VisitRecords records;

    VisitController(VisitRecords records) {
        this.records = records;
    }

    /** What a visit is answered with. */
    record VisitAnswer(String visitId, List<String> flags) {}

    /** Many visits of one device. */
    record Sync(
            @ArraySchema(schema = @Schema(implementation = VisitRequest.class))
            List<JsonNode> records) {}

    /** One result per record, in the order of the records. */
    record SyncAnswer(List<Recorded> results) {}

    @PostMapping("/visits")
    @Operation(
            summary = "Record a visit",
            description = "Always accepted, also late, out of order, or for a band nobody has told of yet. Flags say"
                    + " what somebody should know: catch-is-lower-bound, band-not-known-yet, recorded-late, and so on."
                    + " Replaced pieces are told to the ledger: old to the bag, new from the person to the tree.")
    VisitAnswer record(@RequestBody VisitRequest request, ActingPerson acting) {
        Recorded recorded = records.one(request, acting.id());
        return new VisitAnswer(request.visitId(), recorded.flags());
    }

    @PostMapping("/visits/sync")
    @Operation(
            summary = "Record many visits of one device in one transaction",
            description = "Each record is done once under its own commandId, so a sync whose answer was lost can be"
                    + " sent again as it is. A record that cannot be accepted is answered with its problem; the others"
                    + " are kept. At most 2,000 records.")
    SyncAnswer sync(@RequestBody Sync sync, ActingPerson acting) {
        if (sync.records().size() > MOST_RECORDS) {
            throw new IllegalArgumentException("A sync of [%d] records is too long. Send at most %d at a time."
                    .formatted(sync.records().size(), MOST_RECORDS));
        }
        return new SyncAnswer(records.many(sync.records(), acting.id()));
    }
}
