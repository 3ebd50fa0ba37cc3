package org.bandtrail.siteinstalls.planmaking;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.workplans.PlanContent;
import org.bandtrail.siteinstalls.workplans.PlanId;
import org.bandtrail.siteinstalls.workplans.PlanNeed;
import org.bandtrail.siteinstalls.workplans.PlanTree;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand;
import org.bandtrail.siteinstalls.workplans.WorkPlanView;
import org.bandtrail.siteinstalls.workplans.WorkPlans;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Work plans over HTTP. */
@RestController
@Tag(name = "work plans", description = "Which trees get their bands on which day, and whether the stock suffices")
final class WorkPlanController {
    private static final PlanId NOT_YET_NAMED = new PlanId("NEW");
    private final Work work;
    private final Commands commands;
    private final PlanMaking making;
    private final PlanReview review;
    private final WorkPlans plans;
    private final Clock clock;

    WorkPlanController(
            Work work, Commands commands, PlanMaking making, PlanReview review, WorkPlans plans, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.making = making;
        this.review = review;
        this.plans = plans;
        this.clock = clock;
    }

    @PostMapping("/work-plans/check")
    @Operation(
            summary = "What a plan would need and whether the stock suffices; nothing is kept",
            description = "planId names the plan that would be changed, so that it is not counted against itself.")
    Checked check(@Valid @RequestBody Check request) {
        PlanContent content = making.content(request.plan());
        PlanId plan = Objects.requireNonNullElse(request.planId(), NOT_YET_NAMED);
        return new Checked(content.trees(), content.needs(), review.of(Asked.of(plan, content), clock.instant()));
    }

    @PostMapping("/work-plans")
    @Operation(
            summary = "Draft a plan",
            description = "Without planId it is named by its day and crew. agree=true agrees to it at once.")
    Planned draft(@Valid @RequestBody Draft request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Planned.class, () -> {
            Occurred when = Occurred.at(clock.instant());
            PlanContent content = making.content(request.plan());
            PlanId plan = Objects.requireNonNullElseGet(request.planId(), () -> named(content));
            commands.send(new WorkPlanCommand.Draft(plan, content, person.id(), when));
            if (request.agree()) {
                commands.send(new WorkPlanCommand.Agree(plan, person.id(), when));
            }
            return new Planned(plan);
        });
    }

    @PostMapping("/work-plans/{planId}/change")
    @Operation(
            summary = "Plan it otherwise",
            description = "All of it as it ought to be; an agreed plan needs a reason.")
    Planned change(
            @PathVariable PlanId planId,
            @Valid @RequestBody Change request,
            @Parameter(hidden = true) ActingPerson person) {
        return done(
                request.commandId(),
                List.of(planId.value(), request),
                planId,
                when -> new WorkPlanCommand.Change(
                        planId, making.content(request.plan()), text(request.reason()), person.id(), when));
    }

    @PostMapping("/work-plans/{planId}/agree")
    @Operation(summary = "Agree to a plan; from now on supply stock counts what it needs")
    Planned agree(
            @PathVariable PlanId planId,
            @Valid @RequestBody Word request,
            @Parameter(hidden = true) ActingPerson person) {
        return done(request.commandId(), List.of(planId.value(), request), planId, when -> {
            WorkPlanView.Whole whole = plans.one(planId).orElseThrow(() -> new NoSuch("plan", planId));
            making.requireStillReady(
                    whole.walk().stream().map(line -> new TreeId(line.treeId())).toList(),
                    whole.plan().day(),
                    whole.plan().lastDay(),
                    whole.plan().pest());
            return new WorkPlanCommand.Agree(planId, person.id(), when);
        });
    }

    @PostMapping("/work-plans/{planId}/done")
    @Operation(summary = "Note that the work of a plan is done; why is a note and may be empty")
    Planned finish(
            @PathVariable PlanId planId,
            @Valid @RequestBody Word request,
            @Parameter(hidden = true) ActingPerson person) {
        return done(
                request.commandId(),
                List.of(planId.value(), request),
                planId,
                when -> new WorkPlanCommand.Finish(planId, text(request.why()), person.id(), when));
    }

    @PostMapping("/work-plans/{planId}/call-off")
    @Operation(summary = "Call a plan off, with the reason; what it needed is needed no more")
    Planned callOff(
            @PathVariable PlanId planId,
            @Valid @RequestBody Word request,
            @Parameter(hidden = true) ActingPerson person) {
        return done(
                request.commandId(),
                List.of(planId.value(), request),
                planId,
                when -> new WorkPlanCommand.CallOff(planId, text(request.why()), person.id(), when));
    }

    private Planned done(UUID commandId, Object content, PlanId plan, Function<Occurred, WorkPlanCommand> command) {
        return work.once(commandId, content, Planned.class, () -> {
            commands.send(command.apply(Occurred.at(clock.instant())));
            return new Planned(plan);
        });
    }

    private PlanId named(PlanContent content) {
        String base = "%s-%s".formatted(content.day(), content.crew());
        PlanId name = new PlanId(base.substring(0, Math.min(36, base.length())));
        for (int number = 2; plans.exists(name); number++) {
            name = new PlanId("%s-%d".formatted(base.substring(0, Math.min(36, base.length())), number));
        }
        return name;
    }

    private static String text(@Nullable String given) {
        return Objects.requireNonNullElse(given, "");
    }

    record Check(@Nullable PlanId planId, @Valid @NotNull PlanWish plan) {}

    record Draft(
            @NotNull UUID commandId,
            @Nullable PlanId planId,
            boolean agree,
            @Valid @NotNull PlanWish plan) {}

    record Change(
            @NotNull UUID commandId,
            @Valid @NotNull PlanWish plan,
            @Nullable String reason) {}

    record Word(@NotNull UUID commandId, @Nullable String why) {}

    record Planned(PlanId planId) {}

    record Checked(List<PlanTree> trees, List<PlanNeed> needs, PlanReview.Found review) {}
}
