package org.bandtrail.siteinstalls.planmaking;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.siteinstalls.workplans.PlanId;
import org.bandtrail.siteinstalls.workplans.WorkPlanView;
import org.bandtrail.siteinstalls.workplans.WorkPlans;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Work plans to read over HTTP. */
@RestController
@Tag(name = "work plans")
final class WorkPlanReadController {
    private static final int LONGEST_PAGE = 500;
    private final PlanReview review;
    private final WorkPlans plans;
    private final Clock clock;

    WorkPlanReadController(PlanReview review, WorkPlans plans, Clock clock) {
        this.review = review;
        this.plans = plans;
        this.clock = clock;
    }

    @GetMapping("/work-plans")
    @Operation(
            summary = "Plans that touch these days, by their first day",
            description = "open=true leaves out what is done or called off.")
    Rows list(
            @RequestParam(required = false) @Nullable LocalDate from,
            @RequestParam(required = false) @Nullable LocalDate until,
            @RequestParam(defaultValue = "false") boolean open,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        LocalDate first = Objects.requireNonNullElse(from, LocalDate.of(2000, 1, 1));
        LocalDate last = Objects.requireNonNullElse(until, LocalDate.of(2999, 12, 31));
        List<WorkPlanView> rows = plans.page(first, last, open, after, size);
        return new Rows(
                rows,
                rows.size() < size
                        ? null
                        : rows.getLast().day() + " " + rows.getLast().planId());
    }

    @GetMapping("/work-plans/{planId}")
    @Operation(summary = "One plan with its walk, its needs, its history and what is to be said of it now")
    One one(@PathVariable PlanId planId) {
        WorkPlanView.Whole whole = plans.one(planId).orElseThrow(() -> new NoSuch("plan", planId));
        return new One(whole, review.of(Asked.of(whole), clock.instant()));
    }

    record One(@JsonUnwrapped WorkPlanView.Whole whole, PlanReview.Found review) {}

    record Rows(List<WorkPlanView> rows, @Nullable String next) {}
}
