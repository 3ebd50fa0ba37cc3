package org.bandtrail.frontdesk.bands;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Visits;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Looking at a band, replacing a piece, and taking a band down. */
@Controller
class VisitingController {
    private final Inspections inspections;
    private final Custody custody;

    VisitingController(Inspections inspections, Custody custody) {
        this.inspections = inspections;
        this.custody = custody;
    }

    @GetMapping("/bands/{bandId}/visit")
    String look(@PathVariable String bandId, Model page) {
        return shown("visit", page, bandId, Entered.fresh(Map.of()));
    }

    @PostMapping("/bands/{bandId}/visit")
    String looked(
            @PathVariable String bandId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<Installs.Flag> flags = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Visits.Kept kept = inspections.tell().post("/visits", VisitBody.of(form, bandId, desk), Visits.Kept.class);
            flags.addAll(Answers.flags(kept.flags()));
        });
        if (back.isPresent()) {
            return shown("visit", page, bandId, back.get());
        }
        String visitId = form.identity("visitId");
        Soon.until(() -> inspections.band(bandId).visits().stream()
                .anyMatch(visit -> visit.visitId().equals(visitId)));
        next.addFlashAttribute("done", "Stored: band " + bandId + ", " + Answers.words(form.text("answer")) + ".");
        next.addFlashAttribute("flags", flags);
        boolean alive = form.text("bycatch").equals("yes") && form.text("alive").equals("yes");
        return alive ? "redirect:/stuck-animal" : "redirect:/round";
    }

    @PostMapping("/bands/{bandId}/animal")
    String outcome(
            @PathVariable String bandId,
            @RequestParam MultiValueMap<String, String> sent,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        inspections
                .tell()
                .send(
                        "/bycatch/" + form.identity("visitId") + "/outcome",
                        form.body()
                                .text("outcome", "handedTo")
                                .put("bandId", bandId)
                                .happened(desk.days())
                                .done());
        Soon.until(() -> !inspections.band(bandId).band().bycatchOpen());
        next.addFlashAttribute("done", "Written down: " + form.text("outcome") + ".");
        return "redirect:/bands/" + bandId;
    }

    @GetMapping("/bands/{bandId}/take-down")
    String takeDown(@PathVariable String bandId, Model page) {
        return shown("take-down", page, bandId, Entered.fresh(Map.of()));
    }

    @PostMapping("/bands/{bandId}/take-down")
    String tookDown(
            @PathVariable String bandId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> inspections
                        .tell()
                        .send(
                                "/teardowns",
                                form.body()
                                        .text("teardownId", "personId", "bagId", "mesh", "fasteners")
                                        .put("bandId", bandId)
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown("take-down", page, bandId, back.get());
        }
        Soon.until(() -> inspections.band(bandId).band().state().equals("down"));
        next.addFlashAttribute(
                "done", "Band " + bandId + " is down; its tape is in bag " + form.identity("bagId") + ".");
        return "redirect:/round";
    }

    private String shown(String view, Model page, String bandId, Entered entered) {
        page.addAttribute("band", inspections.band(bandId).band());
        page.addAttribute("bandId", bandId);
        page.addAttribute("stages", Answers.STAGES);
        page.addAttribute(
                "bags", inspections.bags().stream().filter(Visits.Bag::waits).toList());
        custody.offer(page);
        page.addAttribute("entered", entered);
        return view;
    }
}
