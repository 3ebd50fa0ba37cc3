package org.bandtrail.frontdesk.writedowns;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.LandedCosts;
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

/** Stock written down to what it is still worth: the list, and one more. */
@Controller
class WriteDownsController {
    private static final int PAGE = 100;
    private final Invoicing invoicing;

    WriteDownsController(Invoicing invoicing) {
        this.invoicing = invoicing;
    }

    @GetMapping("/write-downs")
    String list(
            Model page,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "REEL") String holding,
            @RequestParam(defaultValue = "") String id) {
        return shown(
                page,
                after,
                Entered.fresh(Map.of("holding", holding, "id", id.strip().toUpperCase(Locale.ROOT))));
    }

    @GetMapping("/write-downs.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<LandedCosts.WriteDown>()
                .column("holding", LandedCosts.WriteDown::holding)
                .column("id", LandedCosts.WriteDown::id)
                .column("material_code", LandedCosts.WriteDown::materialCode)
                .column("currency", row -> row.amount().currency())
                .column("amount_minor", row -> row.amount().minor())
                .column("reason", LandedCosts.WriteDown::reason)
                .column("by", LandedCosts.WriteDown::byPerson)
                .column("happened_at", LandedCosts.WriteDown::happenedAt)
                .file("write-downs", ending, invoicing.allWriteDowns());
    }

    @PostMapping("/write-downs")
    String writeDown(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> invoicing
                        .tell()
                        .send(
                                "/write-downs",
                                form.body()
                                        .text("holding", "reason")
                                        .put("id", form.identity("id"))
                                        .money("amount")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, "", back.get());
        }
        String id = form.identity("id");
        Soon.until(() -> invoicing.writeDowns(Map.of("limit", 1)).rows().stream()
                .anyMatch(row -> row.id().equals(id)));
        next.addFlashAttribute(
                "done",
                "%s %s is written down by %s."
                        .formatted(
                                form.text("holding").equals("REEL") ? "Reel" : "Batch",
                                id.toUpperCase(Locale.ROOT),
                                desk.figures().money(form.money("amount"))));
        return "redirect:/write-downs";
    }

    private String shown(Model page, String after, Entered entered) {
        Rows<LandedCosts.WriteDown> rows = invoicing.writeDowns(Map.of("after", after, "limit", PAGE));
        page.addAttribute("rows", rows.rows());
        page.addAttribute("next", rows.next());
        Entered looked = entered;
        if (!entered.value("id").isEmpty()) {
            try {
                page.addAttribute(
                        "worth",
                        invoicing.worth(
                                entered.value("holding"),
                                entered.value("id").strip().toUpperCase(Locale.ROOT)));
            } catch (NeighbourRefused unknown) {
                // A form that came back with its own reason keeps that one; both would be about the same label.
                looked = entered.problem() == null ? Entered.again(entered.values(), unknown.problem()) : entered;
            }
        }
        page.addAttribute("entered", looked);
        return "write-downs";
    }
}
