package org.bandtrail.frontdesk.reorder;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.money.Books;
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

/** Reorder points, and what they depend on. */
@Controller
class ReorderController {
    private final SupplyStock stock;

    ReorderController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/reorder")
    String reorder(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/reorder.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Books.ReorderPoint>()
                .column("material_code", Books.ReorderPoint::materialCode)
                .column("depot_id", Books.ReorderPoint::depotId)
                .column("unit", Books.ReorderPoint::unit)
                .column("on_hand", Books.ReorderPoint::onHand)
                .column("on_order", Books.ReorderPoint::coming)
                .column("planned", Books.ReorderPoint::planned)
                .column("mean_per_day", Books.ReorderPoint::meanPerDay)
                .column("sd_per_day", Books.ReorderPoint::sdPerDay)
                .column("days_observed", Books.ReorderPoint::daysObserved)
                .column("lead_time_days", Books.ReorderPoint::leadTimeDays)
                .column("lead_time_sd_days", Books.ReorderPoint::leadTimeSdDays)
                .column("service_level_permille", Books.ReorderPoint::serviceLevelPermille)
                .column("safety_stock", Books.ReorderPoint::safetyStock)
                .column("reorder_point", Books.ReorderPoint::reorderPoint)
                .column("reorder_now", Books.ReorderPoint::reorderNow)
                .column("runs_out_on", Books.ReorderPoint::runsOutOn)
                .file("reorder-points", ending, stock.reorderPoints());
    }

    @PostMapping("/reorder/{materialCode}")
    String supply(
            @PathVariable String materialCode,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .put(
                                "/items/" + materialCode + "/supply",
                                form.body()
                                        .whole("leadTimeDays", "leadTimeSdDays", "serviceLevelPermille")
                                        .text("reason")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        next.addFlashAttribute("done", "The supply of " + materialCode + " is changed; the reorder points follow.");
        return "redirect:/reorder";
    }

    private String shown(Model page, Entered entered) {
        List<Books.ReorderPoint> points = stock.reorderPoints();
        page.addAttribute("points", points);
        page.addAttribute(
                "depots", stock.depots().stream().collect(Collectors.toMap(Stock.Depot::depotId, Stock.Depot::name)));
        page.addAttribute("items", stock.items());
        page.addAttribute(
                "now", points.stream().filter(Books.ReorderPoint::reorderNow).toList());
        page.addAttribute("entered", entered);
        return "reorder";
    }
}
