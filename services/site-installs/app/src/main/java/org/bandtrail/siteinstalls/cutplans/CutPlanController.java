package org.bandtrail.siteinstalls.cutplans;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.AgreePlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DrawPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DropPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.HandOverPlan;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Cut plans over HTTP. */
@RestController
@Tag(name = "cut plans", description = "Which piece comes off which reel, with what no plan can do better than")
final class CutPlanController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final Commands commands;
    private final CutPlanning planning;
    private final CutPlans plans;
    private final ReelsOfPlan reels;
    private final Clock clock;

    CutPlanController(
            Work work, Commands commands, CutPlanning planning, CutPlans plans, ReelsOfPlan reels, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.planning = planning;
        this.plans = plans;
        this.reels = reels;
        this.clock = clock;
    }

    @PostMapping("/cut-plans")
    @Operation(
            summary = "Work a cut plan out and keep it",
            description = "Trees in the order of the walk. Without planId one is made from the commandId. blade is text"
                    + " with its unit; seconds bounds the search for each material, 1 to 20. device, programme and pest choose the"
                    + " pieces and the policy; without device it is the usual one of the policy.")
    Kept draw(@Valid @RequestBody Draw request, @Parameter(hidden = true) ActingPerson person) {
        // Worked out before the transaction begins: a search may take seconds and must not hold a connection.
        DrawPlan draw = planning.plan(request.order(), person.id());
        return work.once(request.commandId(), request, Kept.class, () -> {
            commands.send(draw);
            return new Kept(draw.planId());
        });
    }

    @PostMapping("/cut-plans/{planId}/agreed")
    @Operation(summary = "Bind the reels of a plan", description = "partly: although pieces stay uncut")
    Kept agree(
            @PathVariable CutPlanId planId,
            @Valid @RequestBody Agree request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of(planId.value(), request), Kept.class, () -> {
            reels.bind(planId);
            commands.send(new AgreePlan(planId, request.partly(), person.id(), now()));
            return new Kept(planId);
        });
    }

    @PostMapping("/cut-plans/{planId}/dropped")
    @Operation(summary = "Give the reels of a plan free again", description = "Needs a reason")
    Kept drop(
            @PathVariable CutPlanId planId,
            @Valid @RequestBody Drop request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of(planId.value(), request), Kept.class, () -> {
            commands.send(new DropPlan(planId, request.reason(), person.id(), now()));
            plans.release(planId);
            return new Kept(planId);
        });
    }

    @PostMapping("/cut-plans/{planId}/handed-over")
    @Operation(summary = "The pieces of a plan went out with a kit", description = "Only an agreed plan can")
    Kept handOver(
            @PathVariable CutPlanId planId,
            @Valid @RequestBody HandOver request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of(planId.value(), request), Kept.class, () -> {
            commands.send(new HandOverPlan(planId, request.kitId(), person.id(), now()));
            plans.release(planId);
            return new Kept(planId);
        });
    }

    @GetMapping("/cut-plans")
    @Operation(summary = "Cut plans, the latest day first", description = "A page at a time")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<CutPlanView> rows = plans.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().planId());
    }

    @GetMapping("/cut-plans/{planId}")
    @Operation(summary = "One cut plan with its reels and pieces", description = "Lengths in millimetres")
    CutPlanView.Whole one(@PathVariable CutPlanId planId) {
        return plans.whole(planId).orElseThrow(() -> new NoSuch("cut plan", planId));
    }

    private Occurred now() {
        Instant now = clock.instant();
        return new Occurred(now, now);
    }

    record Draw(
            @NotNull UUID commandId,
            @Nullable CutPlanId planId,
            @NotNull DepotId depotId,
            @NotNull LocalDate day,
            @NotEmpty @Valid List<Tree> trees,
            @Nullable MaterialCode tape,
            @Nullable MaterialCode mesh,
            @Nullable String device,
            @Nullable String programme,
            @Nullable String pest,
            @Nullable TapeMeasure measure,
            @Nullable Length blade,
            @Nullable Integer seconds) {
        private static final int USUAL_SECONDS = 5;
        private static final int MOST_SECONDS = 20;

        CutOrder order() {
            int patience = Objects.requireNonNullElse(seconds, USUAL_SECONDS);
            if (patience < 1 || patience > MOST_SECONDS) {
                throw new IllegalArgumentException(
                        "seconds [%d] must be from 1 to %d.".formatted(patience, MOST_SECONDS));
            }
            return new CutOrder(
                    planId == null
                            ? new CutPlanId(
                                    "CP-" + commandId.toString().substring(24).toUpperCase(java.util.Locale.ROOT))
                            : planId,
                    depotId,
                    day,
                    Objects.requireNonNullElse(measure, TapeMeasure.METRIC),
                    trees.stream().map(Tree::wanted).toList(),
                    new CutUse(device, programme, pest),
                    tape,
                    mesh,
                    Objects.requireNonNullElse(blade, Length.ZERO),
                    Duration.ofSeconds(patience));
        }
    }

    record Tree(
            @NotNull TreeId treeId,
            @Nullable Integer bands,
            @Nullable Length girth) {
        CutOrder.Wanted wanted() {
            return new CutOrder.Wanted(treeId, Objects.requireNonNullElse(bands, 1), girth);
        }
    }

    record Agree(@NotNull UUID commandId, boolean partly) {}

    record Drop(@NotNull UUID commandId, @NotNull String reason) {}

    record HandOver(@NotNull UUID commandId, @NotNull KitId kitId) {}

    record Kept(CutPlanId planId) {}

    record Rows(List<CutPlanView> rows, @Nullable String next) {}
}
