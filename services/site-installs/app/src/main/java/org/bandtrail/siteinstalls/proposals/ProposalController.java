package org.bandtrail.siteinstalls.proposals;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Proposals over HTTP. */
@RestController
@Tag(name = "proposals", description = "What to cut for a trunk, with the calculation")
final class ProposalController {
    private final CutPolicies policies;
    private final Trees trees;
    private final Clock clock;

    ProposalController(CutPolicies policies, Trees trees, Clock clock) {
        this.policies = policies;
        this.trees = trees;
        this.clock = clock;
    }

    @GetMapping("/proposals")
    @Operation(
            summary = "What one band takes",
            description = "Give tree, or girth or dbh as text with its unit. measure=imperial rounds up to 1/8 in"
                    + " instead of 5 mm; on, programme and pest choose the policy.")
    Proposed propose(
            @RequestParam(required = false) @Nullable TreeId tree,
            @RequestParam(required = false) @Nullable String girth,
            @RequestParam(required = false) @Nullable String dbh,
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(required = false) @Nullable String programme,
            @RequestParam(required = false) @Nullable String pest,
            @RequestParam(defaultValue = "metric") String measure) {
        LocalDate day = Objects.requireNonNullElseGet(on, () -> LocalDate.ofInstant(clock.instant(), clock.getZone()));
        CutPolicyVersion policy = policies.on(day, programme, pest);
        TapeMeasure steps = TapeMeasure.named(measure);
        WrittenGirth written = written(girth, dbh);
        return Proposed.of(
                written == null ? Proposal.of(registered(tree), policy, steps) : Proposal.of(written, policy, steps));
    }

    private static @Nullable WrittenGirth written(@Nullable String girth, @Nullable String dbh) {
        if (girth != null) {
            return WrittenGirth.ofGirth(girth);
        }
        return dbh == null ? null : WrittenGirth.ofDiameter(dbh);
    }

    private Length registered(@Nullable TreeId tree) {
        if (tree == null) {
            throw new IllegalArgumentException("Neither tree nor girth nor dbh is given. Give one of them.");
        }
        TreeView known = trees.registered(List.of(tree)).get(tree);
        if (known == null) {
            throw new NoSuch("tree", tree);
        }
        if (known.girthMm() == null) {
            throw new NoSuch("measured girth of tree", tree);
        }
        return Length.ofMm(known.girthMm());
    }

    /** The answer; lengths in millimetres. */
    record Proposed(
            long girthMm,
            long tapeMm,
            long meshMm,
            long standOffMm,
            long fasteners,
            long heightMm,
            int policyVersion,
            String formula,
            List<String> cautions) {
        static Proposed of(Proposal proposal) {
            return new Proposed(
                    proposal.girth().mm(),
                    proposal.tape().mm(),
                    proposal.mesh().mm(),
                    proposal.standOff().mm(),
                    proposal.fasteners().count(),
                    proposal.height().mm(),
                    proposal.policyVersion(),
                    proposal.formula(),
                    proposal.cautions());
        }
    }
}
