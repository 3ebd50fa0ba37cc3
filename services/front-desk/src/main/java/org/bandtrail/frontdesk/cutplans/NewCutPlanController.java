package org.bandtrail.frontdesk.cutplans;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.neighbours.field.Cuts;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.neighbours.field.Policies;
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
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Working a cut plan out, from a work plan or from a list of trees. */
@Controller
class NewCutPlanController {
    private final CutPlanning planning;
    private final WorkPlanning workPlanning;
    private final SupplyStock stock;
    private final Policies policies;

    NewCutPlanController(CutPlanning planning, WorkPlanning workPlanning, SupplyStock stock, Policies policies) {
        this.planning = planning;
        this.workPlanning = workPlanning;
        this.stock = stock;
        this.policies = policies;
    }

    @GetMapping("/cut-plans/new")
    String form(Model page, @ModelAttribute("desk") Desk desk, @RequestParam(required = false) @Nullable String plan) {
        Map<String, String> filled =
                new HashMap<>(Map.of("day", desk.days().today().toString()));
        if (plan != null) {
            Plan.Whole work = workPlanning.plan(plan);
            filled.put("day", work.day().toString());
            filled.put("depotId", work.depotId());
            filled.put("device", work.device());
            filled.put("programme", Objects.requireNonNullElse(work.programme(), ""));
            filled.put("pest", Objects.requireNonNullElse(work.pest(), ""));
            filled.put("tape", Objects.requireNonNullElse(work.tapeCode(), ""));
            filled.put("mesh", Objects.requireNonNullElse(work.meshCode(), ""));
            filled.put("trees", TreeList.of(work));
        }
        return shown(page, Entered.fresh(filled));
    }

    @PostMapping("/cut-plans")
    String draw(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        AtomicReference<@Nullable String> drawn = new AtomicReference<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Form form = new Form(sent);
            drawn.set(planning.tell()
                    .post(
                            "/cut-plans",
                            form.body()
                                    .text("depotId", "day", "device", "programme", "pest", "tape", "mesh")
                                    .put("trees", TreeList.read(form.text("trees")))
                                    .put("measure", desk.metric() ? "METRIC" : "IMPERIAL")
                                    .length("blade")
                                    .whole("seconds")
                                    .done(),
                            Cuts.Kept.class)
                    .planId());
        });
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        String planId = String.valueOf(drawn.get());
        Soon.readable(() -> planning.plan(planId));
        next.addFlashAttribute(
                "done", "Cut plan %s is worked out. It binds nothing until it is agreed.".formatted(planId));
        return "redirect:/cut-plans/" + planId;
    }

    private String shown(Model page, Entered entered) {
        List<Stock.Item> items = stock.items();
        page.addAttribute("tapes", ofKind(items, "TAPE"));
        page.addAttribute("meshes", ofKind(items, "MESH"));
        page.addAttribute("kinds", policies.kinds());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "cut-plan-new";
    }

    private static List<Stock.Item> ofKind(List<Stock.Item> items, String kind) {
        return items.stream().filter(item -> item.kind().equals(kind)).toList();
    }
}
