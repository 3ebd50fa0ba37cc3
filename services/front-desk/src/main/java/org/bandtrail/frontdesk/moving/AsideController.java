package org.bandtrail.frontdesk.moving;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
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

/** What stands aside, and setting aside and releasing by hand. */
@Controller
class AsideController {
    private final DepotWork depotWork;
    private final SupplyStock stock;

    AsideController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/set-aside")
    String aside(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/set-aside.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Moved.Aside>()
                .column("depot_id", Moved.Aside::depotId)
                .column("holding", Moved.Aside::holding)
                .column("id", Moved.Aside::id)
                .column("material_code", Moved.Aside::materialCode)
                .column("mm_or_pieces", Moved.Aside::quantity)
                .column("why", Moved.Aside::why)
                .column("by", Moved.Aside::by)
                .column("since", Moved.Aside::since)
                .file("set-aside", ending, depotWork.aside());
    }

    @PostMapping("/set-aside")
    String setAside(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        return moved(sent, "/set-aside", true, page, next);
    }

    @PostMapping("/set-aside/release")
    String release(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        return moved(sent, "/set-aside/release", false, page, next);
    }

    private String moved(
            MultiValueMap<String, String> sent, String path, boolean away, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String label = form.identity("label");
        boolean batch = form.has("pieces") || form.text("holding").equals("batch");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                path,
                                form.body()
                                        .text("depotId", "mark", "reason")
                                        .put(batch ? "batchId" : "reelId", label)
                                        .whole("pieces")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> depotWork.aside().stream().anyMatch(each -> each.id().equals(label)) == away);
        next.addFlashAttribute("done", label + (away ? " is set aside." : " is released."));
        return "redirect:/set-aside";
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("aside", depotWork.aside());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "set-aside";
    }
}
