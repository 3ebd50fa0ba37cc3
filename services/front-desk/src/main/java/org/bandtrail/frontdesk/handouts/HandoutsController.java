package org.bandtrail.frontdesk.handouts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.money.Books;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
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

/** Kits that are out, and handing out another one. */
@Controller
class HandoutsController {
    private static final int PAGE = 50;
    private final SupplyStock stock;

    HandoutsController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/handouts")
    String handouts(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<Stock.Handout> handouts = stock.handouts(Map.of("after", after, "limit", PAGE));
        page.addAttribute(
                "open", handouts.rows().stream().filter(Stock.Handout::open).toList());
        page.addAttribute(
                "closed",
                handouts.rows().stream().filter(handout -> !handout.open()).toList());
        page.addAttribute("next", handouts.next());
        page.addAttribute(
                "toOrder",
                stock.reorderPoints().stream()
                        .filter(Books.ReorderPoint::reorderNow)
                        .toList());
        page.addAttribute("findings", stock.audit().findings().size());
        return "handouts";
    }

    @GetMapping("/handouts.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Handout>()
                .column("kit_id", Stock.Handout::kitId)
                .column("depot_id", Stock.Handout::depotId)
                .column("crew_id", Stock.Handout::crewId)
                .column("person_id", Stock.Handout::personId)
                .column("handed_out_at", Stock.Handout::handedOutAt)
                .column("still_out", Stock.Handout::open)
                .file("handouts", ending, stock.allHandouts());
    }

    @GetMapping("/handouts/new")
    String form(Model page, @RequestParam(defaultValue = "") String depot) {
        return shown(page, Entered.fresh(Map.of("depotId", depot)));
    }

    @PostMapping("/handouts")
    String handOut(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/handouts",
                                form.body()
                                        .text("kitId", "depotId", "crewId", "personId")
                                        .put("reels", form.filled("reelId"))
                                        .put("batches", List.of())
                                        .put("fasteners", fasteners(form))
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> stock.handouts(Map.of("limit", PAGE)).rows().stream()
                .anyMatch(kit -> kit.kitId().equals(form.identity("kitId"))));
        next.addFlashAttribute(
                "done",
                "Kit %s is handed out to %s.".formatted(form.identity("kitId"), desk.person(form.text("personId"))));
        return "redirect:/handouts";
    }

    private static List<Map<String, Object>> fasteners(Form form) {
        List<Map<String, Object>> fasteners = new ArrayList<>();
        form.lines("fastener", "fastenerPieces").forEach((line, parts) -> {
            if (!parts.getOrDefault("fastenerPieces", "").isEmpty()) {
                fasteners.add(Map.of(
                        "materialCode",
                        parts.getOrDefault("fastener", ""),
                        "pieces",
                        Form.whole("fastenerPieces", parts.getOrDefault("fastenerPieces", ""))));
            }
        });
        return fasteners;
    }

    private String shown(Model page, Entered entered) {
        List<Stock.Depot> depots = stock.depots();
        String depot = entered.value("depotId");
        String chosen =
                depot.isEmpty() && depots.size() == 1 ? depots.getFirst().depotId() : depot;
        page.addAttribute("depots", depots);
        page.addAttribute("depot", chosen);
        page.addAttribute("crews", stock.crews());
        Map<String, String> inDepot = new HashMap<>(Map.of("place", "depot:" + chosen));
        page.addAttribute("reels", chosen.isEmpty() ? List.of() : stock.allReels(inDepot));
        page.addAttribute("batches", chosen.isEmpty() ? List.of() : stock.allBatches(inDepot));
        page.addAttribute(
                "fasteners",
                stock.items().stream()
                        .filter(item -> item.kind().equalsIgnoreCase("fastener"))
                        .toList());
        page.addAttribute("entered", entered);
        return "handout-new";
    }
}
