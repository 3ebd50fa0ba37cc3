package org.bandtrail.inspections.duebands;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The visit policy over HTTP. */
@RestController
@Tag(name = "visit policy", description = "When bands are looked at, as versions with a source and a reason")
final class VisitPolicyController {
    private final Work work;
    private final VisitPolicies policies;
    private final Clock clock;

    VisitPolicyController(Work work, VisitPolicies policies, Clock clock) {
        this.work = work;
        this.policies = policies;
        this.clock = clock;
    }

    /** All versions, oldest first, and the one in force now. */
    record Versions(int inForce, List<VisitPolicy> rows) {}

    /** A new version. */
    record Adopt(
            UUID commandId,
            LocalDate validFrom,
            int intervalDays,
            int loadFromPercent,
            int loadIntervalDays,
            int fullFromPercent,
            int guardIntervalDays,
            int retryIntervalDays,
            int maxDaysUp,
            int lateAfterHours,

            @Schema(description = "Where the numbers come from")
            String source,

            @Schema(description = "Why they are adopted now")
            String reason) {
        VisitPolicy policy(int version) {
            return new VisitPolicy(
                    version,
                    validFrom,
                    intervalDays,
                    loadFromPercent,
                    loadIntervalDays,
                    fullFromPercent,
                    guardIntervalDays,
                    retryIntervalDays,
                    maxDaysUp,
                    lateAfterHours,
                    source,
                    reason);
        }
    }

    @GetMapping("/policies/visits")
    @Operation(
            summary = "All versions of the visit policy",
            description = "Every number is a default with a source; local codes, permits and licensed people come"
                    + " first.")
    Versions versions() {
        List<VisitPolicy> all = policies.all();
        return new Versions(
                new VisitPolicies.Judge(all).inForce(clock.instant()).version(), all);
    }

    @PostMapping("/policies/visits")
    @Operation(
            summary = "Adopt a new version from a date",
            description = "Earlier versions stay; a visit keeps the version it was judged by.")
    VisitPolicy adopt(@RequestBody Adopt request, ActingPerson acting) {
        return work.once(request.commandId(), request, VisitPolicy.class, () -> {
            VisitPolicy policy = request.policy(policies.nextVersion());
            policies.add(policy, acting.id(), clock.instant());
            return policy;
        });
    }
}
