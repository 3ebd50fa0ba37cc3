package org.bandtrail.frontdesk.handouts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Visits;
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

/** Waste bags, and the load that takes them to disposal. */
@Controller
class WasteController {
    private final Inspections inspections;

    WasteController(Inspections inspections) {
        this.inspections = inspections;
    }

    @GetMapping("/waste")
    String waste(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/waste.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Visits.Bag>()
                .column("bag_id", Visits.Bag::bagId)
                .column("tape_mm", Visits.Bag::tapeMm)
                .column("mesh_mm", Visits.Bag::meshMm)
                .column("pieces", Visits.Bag::pieces)
                .column("state", Visits.Bag::state)
                .column("load_id", Visits.Bag::loadId)
                .file("waste-bags", ending, inspections.bags());
    }

    @PostMapping("/loads")
    String dispose(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<String> bags = form.filled("bagIds");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> inspections
                        .tell()
                        .send(
                                "/loads",
                                form.body()
                                        .text("loadId", "carrier")
                                        .put("bagIds", bags)
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> inspections.bags().stream().noneMatch(bag -> bag.waits() && bags.contains(bag.bagId())));
        next.addFlashAttribute(
                "done",
                "Load %s took %s to disposal."
                        .formatted(form.identity("loadId"), bags.size() == 1 ? "one bag" : bags.size() + " bags"));
        return "redirect:/waste";
    }

    private String shown(Model page, Entered entered) {
        List<Visits.Bag> bags = inspections.bags();
        page.addAttribute("waiting", bags.stream().filter(Visits.Bag::waits).toList());
        page.addAttribute("gone", bags.stream().filter(bag -> !bag.waits()).toList());
        page.addAttribute("entered", entered);
        return "waste";
    }
}
