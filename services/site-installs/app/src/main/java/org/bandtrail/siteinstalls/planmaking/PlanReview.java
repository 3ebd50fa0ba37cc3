package org.bandtrail.siteinstalls.planmaking;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.depotstock.DepotStock;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.bandtrail.siteinstalls.workplans.WorkPlanView;
import org.bandtrail.siteinstalls.workplans.WorkPlans;
import org.springframework.stereotype.Component;

/** Looks at a plan with what the house knows at this moment. */
@Component
class PlanReview {
    private final DepotStock stock;
    private final WorkPlans plans;
    private final Trees trees;
    private final PlanWarnings words;
    private final CrewHours hours;

    PlanReview(DepotStock stock, WorkPlans plans, Trees trees, PlanWarnings words, CrewHours hours) {
        this.stock = stock;
        this.plans = plans;
        this.trees = trees;
        this.words = words;
        this.hours = hours;
    }

    /**
     * What was found.
     *
     * @param suffices whether the depot has enough of everything
     * @param minutes the crew needs for this plan
     * @param minutesThere the crew has on these days
     * @param hoursSource where the minutes come from
     */
    record Found(
            boolean suffices,
            List<StockLine> stock,
            long minutes,
            long minutesThere,
            String hoursSource,
            List<String> warnings) {}

    Found of(Asked plan, Instant now) {
        List<StockLine> lines = stockLines(plan, now);
        Map<TreeId, TreeView> known = trees.registered(plan.trees());
        long sites = known.values().stream().map(TreeView::siteId).distinct().count();
        long minutes = hours.minutes(plan.bands(), plan.trees().size(), sites);
        long there = hours.minutesPerDay() * (ChronoUnit.DAYS.between(plan.day(), plan.lastDay()) + 1);
        List<String> warnings = new ArrayList<>();
        aboutHours(plan, minutes, there, warnings);
        warnings.addAll(words.of(plan, known));
        return new Found(lines.stream().allMatch(StockLine::enough), lines, minutes, there, hours.source(), warnings);
    }

    private List<StockLine> stockLines(Asked plan, Instant now) {
        Map<MaterialCode, Long> others = plans.neededBefore(plan.depot(), plan.lastDay(), plan.plan());
        return plan.needs().stream()
                .map(need -> {
                    long before = others.getOrDefault(need.material(), 0L);
                    return need.kind().onReels()
                            ? StockLine.ofReels(
                                    need, stock.reels(plan.depot(), need.material()), before, plan.lastDay(), now)
                            : StockLine.ofBatches(need, stock.batches(plan.depot(), need.material(), now), before);
                })
                .toList();
    }

    private void aboutHours(Asked plan, long minutes, long there, List<String> warnings) {
        List<WorkPlanView> others = plans.ofCrew(plan.crew(), plan.day(), plan.lastDay(), plan.plan());
        long elsewhere = others.stream()
                .mapToLong(other -> hours.minutes(
                        other.bands(), other.trees(), other.sites().size()))
                .sum();
        if (minutes + elsewhere > there) {
            String with = others.isEmpty()
                    ? ""
                    : " together with plan %s"
                            .formatted(String.join(
                                    ", ",
                                    others.stream().map(WorkPlanView::planId).toList()));
            warnings.add("Crew %s would work about %s%s and has about %s."
                    .formatted(plan.crew(), inWords(minutes + elsewhere), with, inWords(there)));
        }
    }

    private static String inWords(long minutes) {
        return minutes % 60 == 0 ? "%d h".formatted(minutes / 60) : "%d h %d min".formatted(minutes / 60, minutes % 60);
    }
}
