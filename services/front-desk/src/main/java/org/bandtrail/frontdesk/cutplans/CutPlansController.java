package org.bandtrail.frontdesk.cutplans;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.kits.PackedFor;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.neighbours.field.Cuts;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** All cut plans, and one with what may be done to it. */
@Controller
class CutPlansController {
    private final CutPlanning planning;
    private final PackedFor packed;

    CutPlansController(CutPlanning planning, PackedFor packed) {
        this.planning = planning;
        this.packed = packed;
    }

    @GetMapping("/cut-plans")
    String list(Model page, @RequestParam(required = false) @Nullable String after) {
        var rows = planning.plans(after);
        page.addAttribute("plans", rows.rows());
        page.addAttribute("next", rows.next());
        page.addAttribute("first", after == null);
        return "cut-plans";
    }

    @GetMapping("/cut-plans.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Cuts.Row>()
                .column("cut_plan_id", Cuts.Row::planId)
                .column("day", Cuts.Row::day)
                .column("depot_id", Cuts.Row::depotId)
                .column("state", Cuts.Row::state)
                .column("trees", Cuts.Row::trees)
                .column("pieces", Cuts.Row::pieces)
                .column("uncut", Cuts.Row::uncut)
                .column("lost_mm", Cuts.Row::lossMm)
                .column("least_lost_mm", Cuts.Row::leastLossMm)
                .column("proven", Cuts.Row::proven)
                .column("kit_id", Cuts.Row::kitId)
                .column("dropped_because", Cuts.Row::reason)
                .file("cut-plans", ending, planning.allPlans());
    }

    @GetMapping("/cut-plans/{planId}")
    String plan(@PathVariable String planId, Model page) {
        return shown(planning.plan(planId), Entered.fresh(Map.of()), page);
    }

    @GetMapping("/cut-plans/{planId}/pieces.{ending:csv|xlsx}")
    ResponseEntity<byte[]> pieces(@PathVariable String planId, @PathVariable String ending) {
        Cuts.Whole plan = planning.plan(planId);
        return new Listing<Cut>()
                .column("tree_id", cut -> cut.piece().treeId())
                .column("position", cut -> cut.piece().position())
                .column("item", cut -> cut.of().material())
                .column("length_mm", cut -> cut.piece().lengthMm())
                .column("reel_id", cut -> cut.of().reelOf(cut.piece()))
                .file(
                        "pieces-" + planId,
                        ending,
                        plan.parts().materials().stream()
                                .flatMap(of -> of.pieces().map(piece -> new Cut(of, piece)))
                                .toList());
    }

    private record Cut(Cuts.Material of, Cuts.Piece piece) {}

    @PostMapping("/cut-plans/{planId}/{act:agreed|dropped|handed-over}")
    String act(
            @PathVariable String planId,
            @PathVariable String act,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Cuts.Whole before = planning.plan(planId);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Form form = new Form(sent);
            Map<String, Object> body =
                    new HashMap<>(form.body().text("reason", "kitId").done());
            body.put("partly", form.has("partly"));
            planning.tell().send("/cut-plans/" + planId + "/" + act, body);
        });
        if (back.isPresent()) {
            return shown(before, back.get(), page);
        }
        Soon.until(
                () -> !planning.plan(planId).plan().state().equals(before.plan().state()));
        next.addFlashAttribute("done", "Cut plan %s is %s.".formatted(planId, act.replace('-', ' ')));
        return "redirect:/cut-plans/" + planId;
    }

    private String shown(Cuts.Whole whole, Entered entered, Model page) {
        Map<String, Bars> bars = new LinkedHashMap<>();
        whole.parts().materials().forEach(of -> bars.put(of.material(), Bars.of(of.reels())));
        page.addAttribute("plan", whole.plan());
        page.addAttribute("parts", whole.parts());
        page.addAttribute("counted", whole.parts().trees().stream().anyMatch(tree -> tree.others() > 0));
        if (whole.plan().state().equals("agreed")) {
            packed.kit(whole.plan().planId()).ifPresent(kit -> page.addAttribute("packed", kit));
        }
        page.addAttribute("bars", bars);
        page.addAttribute("entered", entered);
        return "cut-plan";
    }
}
