package org.bandtrail.frontdesk.plans;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.WorkPlanning;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Making and changing a plan: choose trees, look at it, keep it. */
@Controller
class PlanMakingController {
    private final WorkPlanning planning;
    private final SiteInstalls installs;
    private final SupplyStock stock;
    private final Policies policies;

    PlanMakingController(WorkPlanning planning, SiteInstalls installs, SupplyStock stock, Policies policies) {
        this.planning = planning;
        this.installs = installs;
        this.stock = stock;
        this.policies = policies;
    }

    @GetMapping("/plans/new")
    String choose(
            Model page,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "UNBANDED") String only,
            @RequestParam(defaultValue = "") String q) {
        Entered fresh = Entered.fresh(Map.of("site", site, "only", only, "q", q));
        return shown(page, fresh, null, null);
    }

    @GetMapping("/plans/{planId}/change")
    String change(@PathVariable String planId, Model page) {
        Plan.Whole plan = planning.plan(planId);
        return shown(page, PlanForm.of(plan), plan, null);
    }

    @PostMapping("/plans/check")
    String check(@RequestParam MultiValueMap<String, String> sent, Model page, @ModelAttribute("desk") Desk desk) {
        return lookedAt(sent, null, page, desk);
    }

    @PostMapping("/plans/{planId}/check")
    String check(
            @PathVariable String planId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            @ModelAttribute("desk") Desk desk) {
        return lookedAt(sent, planning.plan(planId), page, desk);
    }

    private String lookedAt(MultiValueMap<String, String> sent, Plan.@Nullable Whole plan, Model page, Desk desk) {
        AtomicReference<Plan.@Nullable Checked> checked = new AtomicReference<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> body = new HashMap<>();
            body.put("plan", PlanForm.plan(new Form(sent), desk.metric()));
            if (plan != null) {
                body.put("planId", plan.planId());
            }
            checked.set(planning.check(body));
        });
        return shown(page, back.orElseGet(() -> new Entered(sent, null)), plan, checked.get());
    }

    @PostMapping("/plans")
    String draft(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        AtomicReference<@Nullable String> made = new AtomicReference<>();
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> made.set(planning.tell()
                        .post(
                                "/work-plans",
                                form.body()
                                        .put("agree", form.text("agree").equals("true"))
                                        .put("plan", PlanForm.plan(form, desk.metric()))
                                        .done(),
                                Plan.Known.class)
                        .planId()));
        if (back.isPresent()) {
            return shown(page, back.get(), null, null);
        }
        String planId = String.valueOf(made.get());
        Soon.readable(() -> planning.plan(planId));
        next.addFlashAttribute("done", "Plan %s is made.".formatted(planId));
        return "redirect:/plans/" + planId;
    }

    @PostMapping("/plans/{planId}/change")
    String changed(
            @PathVariable String planId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Plan.Whole before = planning.plan(planId);
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> planning.tell()
                        .send(
                                "/work-plans/" + planId + "/change",
                                form.body()
                                        .text("reason")
                                        .put("plan", PlanForm.plan(form, desk.metric()))
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get(), before, null);
        }
        Soon.until(
                () -> planning.plan(planId).history().size() > before.history().size());
        next.addFlashAttribute("done", "Plan %s is changed.".formatted(planId));
        return "redirect:/plans/" + planId;
    }

    private String shown(Model page, Entered entered, Plan.@Nullable Whole plan, Plan.@Nullable Checked checked) {
        List<Stock.Item> items = stock.items();
        page.addAttribute("tapes", ofKind(items, "TAPE"));
        page.addAttribute("meshes", ofKind(items, "MESH"));
        page.addAttribute("fasteners", ofKind(items, "FASTENER"));
        page.addAttribute("kinds", policies.kinds());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("crews", stock.crews());
        page.addAttribute("sites", installs.sites());
        String site = entered.value("site");
        Rows<Installs.Tree> choice = site.isEmpty()
                ? new Rows<>(List.of(), null)
                : planning.choice(site, entered.or("only", "UNBANDED"), entered.value("q"));
        page.addAttribute(
                "choice",
                choice.rows().stream().filter(tree -> tree.girthMm() != null).toList());
        page.addAttribute(
                "unmeasured",
                choice.rows().stream().filter(tree -> tree.girthMm() == null).count());
        page.addAttribute("more", choice.next() != null);
        page.addAttribute("chosen", entered.all("tree"));
        page.addAttribute(
                "others",
                entered.all("tree").stream()
                        .filter(id -> choice.rows().stream()
                                .noneMatch(tree -> tree.treeId().equals(id)))
                        .toList());
        page.addAttribute("entered", entered);
        page.addAttribute("plan", plan);
        page.addAttribute("checked", checked);
        return "plan-new";
    }

    private static List<Stock.Item> ofKind(List<Stock.Item> items, String kind) {
        return items.stream().filter(item -> item.kind().equals(kind)).toList();
    }
}
