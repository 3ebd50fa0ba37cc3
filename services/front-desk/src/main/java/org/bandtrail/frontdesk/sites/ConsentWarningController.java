package org.bandtrail.frontdesk.sites;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.field.Sites;
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

/** For how many days ahead the end of a consent is warned of. */
@Controller
class ConsentWarningController {
    private final Sites sites;

    ConsentWarningController(Sites sites) {
        this.sites = sites;
    }

    @GetMapping("/consents/warning")
    String form(Model page, @ModelAttribute("desk") Desk desk) {
        return shown(page, desk, Entered.fresh(Map.of()));
    }

    @PostMapping("/consents/warning")
    String warn(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> sites.tell()
                        .send(
                                "/consents/warning",
                                form.body()
                                        .text("since", "source", "reason")
                                        .whole("days")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, desk, back.get());
        }
        next.addFlashAttribute("done", "One is warned " + form.text("days") + " days before a consent ends.");
        return "redirect:/sites";
    }

    private String shown(Model page, Desk desk, Entered entered) {
        page.addAttribute("warning", sites.standings(desk.days().today()).warning());
        page.addAttribute("entered", entered);
        return "consent-warning";
    }
}
