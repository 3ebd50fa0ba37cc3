package org.bandtrail.frontdesk.handouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Taking back what is left of a kit, measured and counted. */
@Controller
class ReturnsController {
    private final SupplyStock stock;

    ReturnsController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/returns/new")
    String form(
            Model page,
            @RequestParam(defaultValue = "") String kit,
            @RequestParam(defaultValue = "") String person,
            @RequestParam(defaultValue = "") String depot) {
        return shown(page, Entered.fresh(Map.of("kitId", kit, "personId", person, "depotId", depot)));
    }

    @PostMapping("/returns")
    String takeBack(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<Stock.ReturnLine> lines = new ArrayList<>();
        Optional<Entered> refused = Entered.unlessDone(
                sent,
                () -> lines.addAll(stock.tell()
                        .post(
                                "/returns",
                                form.body()
                                        .text("kitId", "personId", "depotId")
                                        .put("reels", reels(form))
                                        .put("batches", batches(form))
                                        .happened(desk.days())
                                        .done(),
                                Stock.Returned.class)
                        .lines()));
        if (refused.isPresent()) {
            return shown(page, refused.get());
        }
        Map<String, String> custody = Map.of("place", "crew:" + form.text("personId"));
        List<String> back = lines.stream().map(Stock.ReturnLine::id).toList();
        Soon.until(() -> stock.allReels(custody).stream().noneMatch(reel -> back.contains(reel.reelId()))
                && stock.allBatches(custody).stream().noneMatch(batch -> back.contains(batch.batchId())));
        next.addFlashAttribute("returned", lines);
        next.addFlashAttribute("returnedReels", form.filled("reelId"));
        next.addFlashAttribute("returnedBy", form.text("personId"));
        return "redirect:/handouts";
    }

    private static List<Map<String, Object>> reels(Form form) {
        List<Map<String, Object>> reels = new ArrayList<>();
        form.lines("reelId", "measured", "measuredUnit").forEach((line, parts) -> {
            String measured = parts.getOrDefault("measured", "");
            if (!measured.isEmpty()) {
                reels.add(Map.of(
                        "reelId",
                        parts.getOrDefault("reelId", ""),
                        "measured",
                        Form.withUnit(measured, parts.getOrDefault("measuredUnit", ""))));
            }
        });
        return reels;
    }

    private static List<Map<String, Object>> batches(Form form) {
        List<Map<String, Object>> batches = new ArrayList<>();
        form.lines("batchId", "counted").forEach((line, parts) -> {
            String counted = parts.getOrDefault("counted", "");
            if (!counted.isEmpty()) {
                batches.add(Map.of(
                        "batchId", parts.getOrDefault("batchId", ""), "counted", Form.whole("counted", counted)));
            }
        });
        return batches;
    }

    private String shown(Model page, Entered entered) {
        Map<String, String> custody = Map.of("place", "crew:" + entered.value("personId"));
        boolean known = !entered.value("personId").isEmpty();
        page.addAttribute("depots", stock.depots());
        page.addAttribute("crews", stock.crews());
        page.addAttribute("reels", known ? stock.allReels(custody) : List.of());
        page.addAttribute("batches", known ? stock.allBatches(custody) : List.of());
        page.addAttribute("entered", entered);
        return "return-new";
    }
}
