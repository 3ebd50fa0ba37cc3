package org.bandtrail.frontdesk.recalls;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Traced;
import org.bandtrail.frontdesk.neighbours.depot.Tracing;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Recalls: the list, starting one, one with what is still out, and lifting it. */
@Controller
class RecallsController {
    private static final int PAGE = 100;
    private static final String TO_BRING_BACK = "crew,vehicle,in-transit";
    private final Tracing tracing;

    RecallsController(Tracing tracing) {
        this.tracing = tracing;
    }

    @GetMapping("/recalls")
    String recalls(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<Traced.Recall> rows = tracing.recalls(after, PAGE);
        page.addAttribute("recalls", rows.rows());
        page.addAttribute(
                "open",
                rows.rows().stream().filter(recall -> recall.liftedAt() == null).count());
        page.addAttribute("next", rows.next());
        return "recalls";
    }

    @GetMapping("/recalls.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Traced.Recall>()
                .column("recall_id", Traced.Recall::recallId)
                .column("lot", Traced.Recall::lot)
                .column("supplier_id", Traced.Recall::supplierId)
                .column("reason", Traced.Recall::reason)
                .column("by_person_id", Traced.Recall::by)
                .column("started_at", Traced.Recall::startedAt)
                .column("reels_and_batches_aside", Traced.Recall::holdings)
                .column("aside_mm", Traced.Recall::lengthMm)
                .column("aside_pieces", Traced.Recall::pieces)
                .column("lifted_at", Traced.Recall::liftedAt)
                .column("lifted_by_person_id", Traced.Recall::liftedBy)
                .column("lift_reason", Traced.Recall::liftReason)
                .file("recalls", ending, tracing.allRecalls());
    }

    @GetMapping("/recalls/new")
    String start(
            Model page, @RequestParam(defaultValue = "") String lot, @RequestParam(defaultValue = "") String supplier) {
        page.addAttribute("entered", Entered.fresh(Map.of("lot", lot, "supplierId", supplier)));
        return "recall-new";
    }

    @PostMapping("/recalls")
    String started(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> tracing.tell()
                        .send(
                                "/recalls",
                                form.body()
                                        .text("recallId", "lot", "supplierId", "reason")
                                        .done()));
        if (back.isPresent()) {
            page.addAttribute("entered", back.get());
            return "recall-new";
        }
        String recallId = form.identity("recallId");
        Soon.readable(() -> tracing.recall(recallId));
        next.addFlashAttribute("done", "Lot " + form.text("lot") + " is recalled. What depots had of it lies aside.");
        return "redirect:/recalls/" + recallId;
    }

    @GetMapping("/recalls/{recallId}")
    String recall(@PathVariable String recallId, Model page) {
        return shown(recallId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/recalls/{recallId}/lift")
    String lift(
            @PathVariable String recallId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> tracing.tell()
                        .send(
                                "/recalls/" + recallId + "/lift",
                                form.body().text("reason").done()));
        if (back.isPresent()) {
            return shown(recallId, page, back.get());
        }
        Soon.until(() -> tracing.recall(recallId).recall().liftedAt() != null);
        next.addFlashAttribute("done", "The recall is lifted. What it had set aside may be used again.");
        return "redirect:/recalls/" + recallId;
    }

    @GetMapping("/recalls/{recallId}/places.{ending:csv|xlsx}")
    ResponseEntity<byte[]> places(@PathVariable String recallId, @PathVariable String ending) {
        return new Listing<Traced.At>()
                .column("place", Traced.At::place)
                .column("site_id", Traced.At::siteId)
                .column("reel_or_batch", Traced.At::holding)
                .column("id", Traced.At::id)
                .column("material_code", Traced.At::materialCode)
                .column("quantity_now", Traced.At::quantity)
                .column("unit", Traced.At::unit)
                .column("first_there_at", Traced.At::firstAt)
                .file("recall-" + recallId, ending, tracing.allStillAt(recallId));
    }

    private String shown(String recallId, Model page, Entered entered) {
        Traced.Recalled recalled = tracing.recall(recallId);
        page.addAttribute("recall", recalled.recall());
        page.addAttribute("trace", recalled.trace());
        page.addAttribute(
                "out", tracing.stillAt(recallId, TO_BRING_BACK, null, PAGE).rows());
        page.addAttribute("trees", tracing.stillAt(recallId, "tree", null, PAGE).rows());
        page.addAttribute("entered", entered);
        return "recall";
    }
}
