package org.bandtrail.frontdesk.kits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.neighbours.field.Cuts;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.WorkPlanning;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Packing a kit: the list is looked at first, then reserved. */
@Controller
class PackingController {
    private final Kits kits;
    private final SupplyStock stock;
    private final SiteInstalls installs;
    private final WorkPlanning planning;
    private final CutPlanning cutting;
    private final PackedFor packed;

    PackingController(
            Kits kits,
            SupplyStock stock,
            SiteInstalls installs,
            WorkPlanning planning,
            CutPlanning cutting,
            PackedFor packed) {
        this.kits = kits;
        this.stock = stock;
        this.installs = installs;
        this.planning = planning;
        this.cutting = cutting;
        this.packed = packed;
    }

    @GetMapping("/kits/new")
    String form(
            Model page,
            @RequestParam(defaultValue = "") String trees,
            @RequestParam(defaultValue = "") String plan,
            @RequestParam(defaultValue = "") String cut) {
        if (!cut.isEmpty()) {
            return shown(page, Entered.fresh(cut(cut)), null);
        }
        return shown(page, Entered.fresh(plan.isEmpty() ? Map.of("trees", trees) : planned(plan)), null);
    }

    /** The form as a work plan fills it; its trees are pasted in the order of the walk. */
    private Map<String, String> planned(String planId) {
        Plan.Whole plan = planning.plan(planId);
        Map<String, String> filled = new HashMap<>();
        filled.put("depotId", plan.depotId());
        filled.put("crewId", plan.crewId());
        filled.put("tape", Objects.requireNonNullElse(plan.tapeCode(), ""));
        filled.put("mesh", Objects.requireNonNullElse(plan.meshCode(), ""));
        filled.put("fastener", Objects.requireNonNullElse(plan.fastenerCode(), ""));
        filled.put(
                "trees",
                plan.walk().stream()
                        .map(line -> line.bands() == 1 ? line.treeId() : line.treeId() + " x" + line.bands())
                        .collect(Collectors.joining("\n")));
        return filled;
    }

    /** The form as a cut plan fills it: its depot, its items, its trees; the lengths and reels follow with the lines. */
    private Map<String, String> cut(String planId) {
        Cuts.Whole plan = cutting.plan(planId);
        Map<String, String> filled = new HashMap<>(Map.of("cut", planId, "tape", "", "mesh", ""));
        filled.put("kitId", packed.nextName(planId));
        filled.put("depotId", plan.plan().depotId());
        plan.parts().materials().forEach(of -> filled.put(of.kind().toLowerCase(Locale.ROOT), of.material()));
        filled.put("trees", new CutPlanTrees(plan.parts()).text());
        return filled;
    }

    @PostMapping("/kits/plan")
    String plan(@RequestParam MultiValueMap<String, String> sent, Model page, @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<Kit.Planned> planned = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(
                sent, () -> planned.add(kits.tell().post("/kits/plan", body(form, desk), Kit.Planned.class)));
        if (back.isPresent()) {
            return shown(page, back.get(), null);
        }
        return shown(page, new Entered(sent, null), planned.getFirst());
    }

    @PostMapping("/kits")
    String reserve(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> kits.tell().send("/kits", body(form, desk)));
        if (back.isPresent()) {
            return shown(page, back.get(), null);
        }
        String kitId = form.identity("kitId");
        Soon.readable(() -> kits.kit(kitId));
        next.addFlashAttribute(
                "done", "Kit %s is reserved for %s.".formatted(kitId, desk.person(form.text("personId"))));
        return "redirect:/kits/" + kitId;
    }

    private Map<String, Object> body(Form form, Desk desk) {
        String unit = form.has("treesUnit") ? form.text("treesUnit") : desk.smallUnit();
        TreeLines lines = new TreeLines(!form.text("lengthsAre").equals("tape"), unit, this::girth);
        Map<String, Object> rule = form.columns()
                .length("overlap", "tab", "meshExtra", "fastenerSpacing")
                .whole("fewestFasteners")
                .done();
        Form.Body body = form.body()
                .text("kitId", "depotId", "crewId", "personId", "tape", "mesh", "fastener")
                .happened(desk.days());
        if (form.has("cut")) {
            CutPlanTrees cut = new CutPlanTrees(cutting.plan(form.text("cut")).parts());
            body.put("trees", cut.read(form.text("trees"), lines));
            body.put("reels", cut.reels(form.text("trees")));
        } else {
            body.put("trees", lines.read(form.text("trees")));
        }
        if (!rule.isEmpty()) {
            body.put("rule", rule);
        }
        if (form.has("until")) {
            body.put("until", desk.days().entered(form.text("until")).toString());
        }
        return body.done();
    }

    private @Nullable Long girth(String treeId) {
        try {
            return installs.tree(treeId).girthMm();
        } catch (NeighbourRefused refused) {
            if (refused.status() == HttpStatus.NOT_FOUND.value()) {
                return null;
            }
            throw refused;
        }
    }

    private String shown(Model page, Entered entered, Kit.@Nullable Planned planned) {
        page.addAttribute("depots", stock.depots());
        page.addAttribute("crews", stock.crews());
        Map<String, List<Object>> byKind = new HashMap<>();
        stock.items()
                .forEach(item -> byKind.computeIfAbsent(item.kind(), kind -> new ArrayList<>())
                        .add(item));
        page.addAttribute("tapes", byKind.getOrDefault("TAPE", List.of()));
        page.addAttribute("meshes", byKind.getOrDefault("MESH", List.of()));
        page.addAttribute("fasteners", byKind.getOrDefault("FASTENER", List.of()));
        String cut = entered.value("cut");
        page.addAttribute(
                "leftOut",
                cut.isEmpty() ? List.of() : new CutPlanTrees(cutting.plan(cut).parts()).leftOut());
        page.addAttribute("rule", kits.rule());
        page.addAttribute("entered", entered);
        page.addAttribute("planned", planned);
        return "kit-new";
    }
}
