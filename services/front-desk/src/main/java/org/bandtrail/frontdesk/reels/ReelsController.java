package org.bandtrail.frontdesk.reels;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.trail.Drawn;
import org.bandtrail.frontdesk.trail.Flow;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Reels: the list, one reel, and receiving one. */
@Controller
class ReelsController {
    private static final int PAGE = 100;
    private final SupplyStock stock;

    ReelsController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/reels")
    String reels(
            Model page,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String material,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(Map.of("q", q, "material", material, "place", place));
        asked.put("after", after);
        asked.put("limit", PAGE);
        Rows<Stock.Reel> reels = stock.reels(asked);
        page.addAttribute("reels", reels.rows());
        page.addAttribute("next", reels.next());
        page.addAttribute("items", stock.items());
        page.addAttribute("q", q);
        page.addAttribute("material", material);
        page.addAttribute("place", place);
        return "reels";
    }

    @GetMapping("/reels.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Reel>()
                .column("reel_id", Stock.Reel::reelId)
                .column("material_code", Stock.Reel::materialCode)
                .column("received_mm", Stock.Reel::receivedMm)
                .column("in_depot_mm", Stock.Reel::inDepotMm)
                .column("with_crew_mm", Stock.Reel::withCrewMm)
                .column("on_tree_mm", Stock.Reel::onTreeMm)
                .column("in_bag_mm", Stock.Reel::inBagMm)
                .column("disposed_mm", Stock.Reel::disposedMm)
                .column("missing_mm", Stock.Reel::missingMm)
                .column("written_off_mm", Stock.Reel::writtenOffMm)
                .column("place", Stock.Reel::place)
                .column(
                        "cost_minor",
                        reel -> reel.cost() == null ? null : reel.cost().minor())
                .column(
                        "currency",
                        reel -> reel.cost() == null ? null : reel.cost().currency())
                .column("last_moved_at", Stock.Reel::lastMovedAt)
                .file("reels", ending, stock.allReels(Map.of()));
    }

    @GetMapping("/reels/{reelId}")
    String reel(@PathVariable String reelId, Model page, @ModelAttribute("desk") Desk desk) {
        Stock.WholeReel whole = stock.reel(reelId);
        page.addAttribute("whole", whole);
        page.addAttribute("reel", whole.balance());
        page.addAttribute("drawn", Drawn.one(Flow.of(whole.balance()), desk.figures()));
        return "reel";
    }

    @GetMapping("/reels/new")
    String receive(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/reels")
    String received(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/reels",
                                form.body()
                                        .text("reelId", "materialCode", "depotId", "lot")
                                        .length("length")
                                        .money("cost")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        String reelId = form.identity("reelId");
        Soon.readable(() -> stock.reel(reelId));
        next.addFlashAttribute("done", "Reel " + reelId + " is received with " + form.length("length") + ".");
        return "redirect:/reels/" + reelId;
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("items", stock.items());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "reel-new";
    }
}
