package org.bandtrail.frontdesk.grants;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Funding;
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

/** Grants: the list with what is left, one grant, entering one, changing its terms. */
@Controller
class GrantsController {
    private final Finance finance;
    private final SitesOfGrants sites;

    GrantsController(Finance finance, SitesOfGrants sites) {
        this.finance = finance;
        this.sites = sites;
    }

    @GetMapping("/grants")
    String grants(Model page) {
        page.addAttribute("grants", sites.standing());
        page.addAttribute("shares", sites.shares());
        page.addAttribute("sites", sites.names());
        return "grants";
    }

    @GetMapping("/grants.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<SitesOfGrants.Standing>()
                .column("grant_id", standing -> standing.grant().grantId())
                .column("name", standing -> standing.grant().name())
                .column("currency", standing -> standing.grant().amount().currency())
                .column("amount_minor", standing -> standing.grant().amount().minor())
                .column("spent_minor", SitesOfGrants.Standing::spentMinor)
                .column("left_minor", SitesOfGrants.Standing::leftMinor)
                .column("good_from", standing -> standing.grant().from())
                .column("good_until", standing -> standing.grant().until())
                .file("grants", ending, sites.standing());
    }

    @GetMapping("/grants/new")
    String enter(Model page) {
        page.addAttribute("entered", Entered.fresh(Map.of()));
        return "grant-new";
    }

    @PostMapping("/grants")
    String entered(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/grants",
                                form.body()
                                        .text("grantId", "name", "from", "until")
                                        .money("amount")
                                        .done()));
        if (back.isPresent()) {
            page.addAttribute("entered", back.get());
            return "grant-new";
        }
        String grantId = form.identity("grantId");
        Soon.readable(() -> finance.grant(grantId));
        next.addFlashAttribute("done", "Grant " + grantId + " is entered. Now say for which sites it pays.");
        return "redirect:/grants";
    }

    @GetMapping("/grants/{grantId}")
    String grant(@PathVariable String grantId, Model page) {
        return shown(page, finance.grant(grantId), Entered.fresh(Map.of()));
    }

    @PostMapping("/grants/{grantId}/terms")
    String change(
            @PathVariable String grantId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Funding.WholeGrant before = finance.grant(grantId);
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/grants/" + grantId + "/terms",
                                form.body()
                                        .text("name", "from", "until", "reason")
                                        .money("amount")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, before, back.get());
        }
        Soon.until(
                () -> finance.grant(grantId).history().size() > before.history().size());
        next.addFlashAttribute("done", "The terms of " + grantId + " are changed; the old ones stay below.");
        return "redirect:/grants/" + grantId;
    }

    private String shown(Model page, Funding.WholeGrant whole, Entered entered) {
        page.addAttribute("whole", whole);
        page.addAttribute("grant", whole.grant());
        page.addAttribute("entered", entered);
        return "grant";
    }
}
