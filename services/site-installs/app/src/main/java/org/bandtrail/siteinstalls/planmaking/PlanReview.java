package org.bandtrail.siteinstalls.planmaking;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.consents.Activity;
import org.bandtrail.siteinstalls.consents.Consents;
import org.bandtrail.siteinstalls.depotstock.DepotStock;
import org.bandtrail.siteinstalls.policies.CutPolicies;
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
    private final Consents consents;
    private final CutPolicies policies;
    private final CrewHours hours;

    PlanReview(
            DepotStock stock,
            WorkPlans plans,
            Trees trees,
            Consents consents,
            CutPolicies policies,
            CrewHours hours) {
        this.stock = stock;
        this.plans = plans;
        this.trees = trees;
        this.consents = consents;
        this.policies = policies;
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
        aboutDays(plan, warnings);
        aboutTrees(plan, known, warnings);
        aboutConsents(plan, known, warnings);
        if (!plan.guarded()) {
            warnings.add("No guard is planned. Without one birds and other animals stick to the tape.");
        }
        return new Found(
                lines.stream().allMatch(StockLine::enough), lines, minutes, there, hours.source(), warnings);
    }

    private List<StockLine> stockLines(Asked plan, Instant now) {
        Map<MaterialCode, Long> others = plans.neededBefore(plan.depot(), plan.lastDay(), plan.plan());
        return plan.needs().stream()
                .map(need -> {
                    long before = others.getOrDefault(need.material(), 0L);
                    return need.kind().onReels()
                            ? StockLine.ofReels(
                                    need, stock.reels(plan.depot(), need.material()), before, plan.lastDay(), now)
                            : StockLine.ofBatches(
                                    need, stock.batches(plan.depot(), need.material(), now), before);
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
                                    ", ", others.stream().map(WorkPlanView::planId).toList()));
            warnings.add("Crew %s would work about %s%s and has about %s."
                    .formatted(plan.crew(), inWords(minutes + elsewhere), with, inWords(there)));
        }
    }

    private static String inWords(long minutes) {
        return minutes % 60 == 0 ? "%d h".formatted(minutes / 60) : "%d h %d min".formatted(minutes / 60, minutes % 60);
    }

    private static void aboutDays(Asked plan, List<String> warnings) {
        LocalDate from = plan.putUpFrom();
        LocalDate until = plan.putUpUntil();
        if (from != null && plan.day().isBefore(from)) {
            warnings.add("The bands would be up on %s; they make sense from %s on.".formatted(plan.day(), from));
        }
        if (until != null && plan.lastDay().isAfter(until)) {
            warnings.add("The last bands would be up on %s; they ought to be up by %s."
                    .formatted(plan.lastDay(), until));
        }
    }

    private void aboutTrees(Asked plan, Map<TreeId, TreeView> known, List<String> warnings) {
        named(
                "already %s a band up",
                known.values().stream().filter(tree -> tree.bandsUp() > 0), warnings);
        named(
                "%s no species in the register. Check whether they are hosts",
                known.values().stream().filter(tree -> tree.species().isBlank()), warnings);
        plans.elsewhere(plan.trees(), plan.plan()).entrySet().stream()
                .limit(3)
                .forEach(each -> warnings.add(
                        "Tree %s stands in plan %s too.".formatted(each.getKey(), each.getValue())));
    }

    private static void named(String what, Stream<TreeView> trees, List<String> warnings) {
        List<String> ids = trees.map(TreeView::treeId).sorted().toList();
        if (ids.size() == 1) {
            warnings.add("Tree %s %s.".formatted(ids.getFirst(), what.formatted("has")));
        } else if (ids.size() > 1) {
            String more = ids.size() > 4 ? " and %d more".formatted(ids.size() - 4) : "";
            warnings.add("Trees %s%s %s."
                    .formatted(
                            String.join(", ", ids.subList(0, Math.min(4, ids.size()))), more, what.formatted("have")));
        }
    }

    /** Bands have to come off again, and for that too somebody must be let in. */
    private void aboutConsents(Asked plan, Map<TreeId, TreeView> known, List<String> warnings) {
        LocalDate off = plan.lastDay().plusDays(policies.on(plan.day()).values().removeAfterDays());
        known.values().stream().map(TreeView::siteId).distinct().sorted().forEach(site -> consents
                .validOn(new SiteId(site), plan.day(), Activity.BANDS, plan.pest())
                .filter(consent -> consent.validUntil() != null && consent.validUntil().isBefore(off))
                .ifPresent(consent -> warnings.add(
                        "The consent at %s ends on %s, before the bands must be off on %s. Ask for longer in time."
                                .formatted(consent.siteName(), consent.validUntil(), off))));
    }
}
