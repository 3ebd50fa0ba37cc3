package org.bandtrail.frontdesk.setup;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
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

/** What the programme buys. */
@Controller
class ItemsController {
    private final SupplyStock stock;

    ItemsController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/set-up/items")
    String items(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/set-up/items.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Item>()
                .column("material_code", Stock.Item::materialCode)
                .column("kind", Stock.Item::kind)
                .column("name", Stock.Item::name)
                .column("width_mm", Stock.Item::widthMm)
                .column("opening_mm", Stock.Item::openingMm)
                .column("reel_length_mm", Stock.Item::reelLengthMm)
                .column("pack_size_pieces", Stock.Item::packSize)
                .column(
                        "usual_cost_minor",
                        item -> item.unitCost() == null ? null : item.unitCost().minor())
                .column(
                        "currency",
                        item -> item.unitCost() == null ? null : item.unitCost().currency())
                .column("lead_time_days", Stock.Item::leadTimeDays)
                .file("items", ending, stock.items());
    }

    @PostMapping("/set-up/items")
    String register(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String code = form.identity("materialCode");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/items",
                                form.body()
                                        .put("materialCode", code)
                                        .text("kind", "name")
                                        .length("width", "opening", "reelLength")
                                        .whole("packSize")
                                        .money("unitCost")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() ->
                stock.items().stream().anyMatch(item -> item.materialCode().equals(code)));
        next.addFlashAttribute("done", code + " is registered. What to order is reckoned once its lead time is set.");
        return "redirect:/set-up/items";
    }

    @GetMapping("/set-up/items/{code}")
    String item(@PathVariable String code, Model page) {
        return one(code, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/set-up/items/{code}")
    String correct(
            @PathVariable String code,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Stock.Item before = find(code);
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/items/" + code + "/correct",
                                form.body()
                                        .put("kind", before.kind())
                                        .text("name", "reason")
                                        .length("width", "opening", "reelLength")
                                        .whole("packSize")
                                        .money("unitCost")
                                        .done()));
        if (back.isPresent()) {
            return one(code, page, back.get());
        }
        // Sent without a change it stays as it is; then only the usual patience is waited.
        Soon.until(() -> !find(code).equals(before));
        next.addFlashAttribute("done", code + " is corrected; what lies in stock keeps the cost it was bought at.");
        return "redirect:/set-up/items/" + code;
    }

    private Stock.Item find(String code) {
        return stock.items().stream()
                .filter(item -> item.materialCode().equals(code))
                .findFirst()
                .orElseThrow(() -> new UnfitForm("No item is called [%s]. Choose one from the list.".formatted(code)));
    }

    private String one(String code, Model page, Entered entered) {
        page.addAttribute("item", find(code));
        page.addAttribute("entered", entered);
        return "set-up-item";
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("items", stock.items());
        page.addAttribute("entered", entered);
        return "set-up-items";
    }
}
