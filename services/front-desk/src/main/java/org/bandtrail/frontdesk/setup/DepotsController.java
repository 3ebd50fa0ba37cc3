package org.bandtrail.frontdesk.setup;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
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

/** Depots and the bins in them. */
@Controller
class DepotsController {
    private final SupplyStock stock;
    private final DepotWork depotWork;

    DepotsController(SupplyStock stock, DepotWork depotWork) {
        this.stock = stock;
        this.depotWork = depotWork;
    }

    @GetMapping("/set-up/depots")
    String depots(Model page, @RequestParam(defaultValue = "") String depot) {
        return shown(page, Entered.fresh(Map.of("binDepotId", depot)));
    }

    @GetMapping("/set-up/depots.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Depot>()
                .column("depot_id", Stock.Depot::depotId)
                .column("name", Stock.Depot::name)
                .file("depots", ending, stock.depots());
    }

    @PostMapping("/set-up/depots")
    String open(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String depot = form.identity("depotId");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/depots",
                                form.body().put("depotId", depot).text("name").done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> stock.depots().stream().anyMatch(each -> each.depotId().equals(depot)));
        next.addFlashAttribute("done", form.text("name") + " is open.");
        return "redirect:/set-up/depots";
    }

    @PostMapping("/set-up/bins")
    String mark(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String depot = form.identity("binDepotId");
        String mark = form.identity("mark");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/bins",
                                form.body()
                                        .put("depotId", depot)
                                        .put("mark", mark)
                                        .text("words")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> depotWork.bins().stream()
                .anyMatch(bin -> bin.depotId().equals(depot) && bin.mark().equals(mark)));
        next.addFlashAttribute("done", "Bin " + mark + " is marked. Put its sign on the shelf.");
        next.addAttribute("depot", depot);
        return "redirect:/set-up/depots";
    }

    private String shown(Model page, Entered entered) {
        Map<String, List<Moved.Bin>> bins =
                depotWork.bins().stream().collect(Collectors.groupingBy(Moved.Bin::depotId));
        page.addAttribute("depots", stock.depots());
        page.addAttribute("bins", bins);
        page.addAttribute("entered", entered);
        return "set-up-depots";
    }
}
