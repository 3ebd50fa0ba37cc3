package org.bandtrail.siteinstalls.planmaking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.consents.Activity;
import org.bandtrail.siteinstalls.consents.Consents;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.hostchecks.HostCheckView;
import org.bandtrail.siteinstalls.hostchecks.HostChecks;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.workplans.WorkPlans;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What deserves a thought about a plan's days, trees and consents; none of it stops anybody. */
@Component
class PlanWarnings {
    private static final int MOST_NAMED = 4;
    private final WorkPlans plans;
    private final Consents consents;
    private final CutPolicies policies;
    private final HostChecks checks;
    private final DeviceKinds kinds;

    PlanWarnings(WorkPlans plans, Consents consents, CutPolicies policies, HostChecks checks, DeviceKinds kinds) {
        this.plans = plans;
        this.consents = consents;
        this.policies = policies;
        this.checks = checks;
        this.kinds = kinds;
    }

    /** The warnings, the weightiest first. */
    List<String> of(Asked plan, Map<TreeId, TreeView> known) {
        List<String> warnings = new ArrayList<>();
        kinds.named(plan.device()).ifPresent(kind -> aboutDevice(plan, kind, warnings));
        aboutDays(plan, warnings);
        aboutTrees(plan, known, warnings);
        aboutConsents(plan, known, warnings);
        return warnings;
    }

    private static void aboutDevice(Asked plan, DeviceKind kind, List<String> warnings) {
        if (kind.needsGuard() && !plan.guarded()) {
            warnings.add("No guard is planned. Without one birds and other animals stick to the tape.");
        }
        if (kind.question() != null) {
            warnings.add(kind.question());
        }
    }

    private static void aboutDays(Asked plan, List<String> warnings) {
        LocalDate from = plan.putUpFrom();
        LocalDate until = plan.putUpUntil();
        if (from != null && plan.day().isBefore(from)) {
            warnings.add("The bands would be up on %s; they make sense from %s on.".formatted(plan.day(), from));
        }
        if (until != null && plan.lastDay().isAfter(until)) {
            warnings.add(
                    "The last bands would be up on %s; they ought to be up by %s.".formatted(plan.lastDay(), until));
        }
    }

    private void aboutTrees(Asked plan, Map<TreeId, TreeView> known, List<String> warnings) {
        Map<TreeId, HostCheckView> latest = checks.latest(plan.trees());
        named(
                "%s no host. Take %s off the list, or look again",
                plan, tree -> outcome(latest, tree, "NOT_HOST"), warnings);
        named(
                "%s perhaps no host. Look again at the bark and the leaves of %s",
                plan, tree -> outcome(latest, tree, "UNSURE"), warnings);
        named(
                "%s not checked as a host. Do the host check of %s first",
                plan, tree -> !latest.containsKey(tree), warnings);
        named("%s gone. Take %s off the list", plan, tree -> isGone(known.get(tree)), warnings);
        named(
                "%s carrying a band already. Plan %s again only for a second band",
                plan, tree -> isBanded(known.get(tree)), warnings);
        plans.elsewhere(plan.trees(), plan.plan()).entrySet().stream()
                .limit(MOST_NAMED)
                .forEach(each ->
                        warnings.add("Tree %s stands in plan %s too.".formatted(each.getKey(), each.getValue())));
    }

    private static boolean isGone(@Nullable TreeView tree) {
        return tree != null && tree.goneAt() != null;
    }

    private static boolean isBanded(@Nullable TreeView tree) {
        return tree != null && tree.bandsUp() > 0;
    }

    private static boolean outcome(Map<TreeId, HostCheckView> latest, TreeId tree, String outcome) {
        HostCheckView check = latest.get(tree);
        return check != null && check.outcome().equals(outcome);
    }

    /** One warning for all trees of which something is true; the words for one and for many are put in. */
    private static void named(String what, Asked plan, Predicate<TreeId> which, List<String> warnings) {
        List<String> ids =
                plan.trees().stream().filter(which).map(TreeId::value).toList();
        if (ids.size() == 1) {
            warnings.add("Tree %s %s.".formatted(ids.getFirst(), what.formatted("is", "it")));
        } else if (ids.size() > 1) {
            String more = ids.size() > MOST_NAMED ? " and %d more".formatted(ids.size() - MOST_NAMED) : "";
            warnings.add("Trees %s%s %s."
                    .formatted(
                            String.join(", ", ids.subList(0, Math.min(MOST_NAMED, ids.size()))),
                            more,
                            what.formatted("are", "them")));
        }
    }

    /** Bands have to come off again, and for that too somebody must be let in. */
    private void aboutConsents(Asked plan, Map<TreeId, TreeView> known, List<String> warnings) {
        LocalDate off = plan.lastDay()
                .plusDays(policies.on(plan.day(), plan.programme(), plan.pest())
                        .values()
                        .removeAfterDays());
        known.values().stream()
                .map(TreeView::siteId)
                .distinct()
                .sorted()
                .forEach(site -> consents.validOn(new SiteId(site), plan.day(), Activity.BANDS, plan.pest())
                        .filter(consent -> consent.validUntil() != null
                                && consent.validUntil().isBefore(off))
                        .ifPresent(consent -> warnings.add(
                                "The consent at %s ends on %s, before the bands must be off on %s. Ask for longer in time."
                                        .formatted(consent.siteName(), consent.validUntil(), off))));
    }
}
