package org.bandtrail.frontdesk.sites;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
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

/** Consents: entering one, one with its history, and what becomes of it. */
@Controller
class ConsentsController {
    /** What may be allowed, with the words for it, in the order in which it is asked. */
    static final Map<String, String> ACTIVITIES = activities();

    private final Sites sites;
    private final TreeCare care;

    ConsentsController(Sites sites, TreeCare care) {
        this.sites = sites;
        this.care = care;
    }

    private static Map<String, String> activities() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("MEASURE", "tagging and measuring trees");
        words.put("BANDS", "bands and guards");
        words.put("TRAPS", "traps");
        words.put("SCRAPE", "scraping loose bark");
        words.put("FELL", "taking down host trees");
        return words;
    }

    @GetMapping("/sites/{siteId}/consents/new")
    String form(@PathVariable String siteId, Model page) {
        return shown(page, siteId, Entered.fresh(Map.of("said", "yes")));
    }

    private String shown(Model page, String siteId, Entered entered) {
        page.addAttribute("whole", sites.one(siteId));
        page.addAttribute("activities", ACTIVITIES);
        page.addAttribute("entered", entered);
        return "consent-new";
    }

    @PostMapping("/sites/{siteId}/consents")
    String enter(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        boolean given = form.text("said").equals("yes");
        String[] made = new String[1];
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Form.Body body = form.body()
                    .put("siteId", siteId)
                    .put("activities", form.filled("activities"))
                    .put("pests", List.of(form.text("pests").split("[ ,;]+")))
                    .put("contact", contact(form))
                    .text("area");
            if (given) {
                body.text("from", "until", "how");
            }
            made[0] = sites.tell()
                    .post(given ? "/consents/give" : "/consents", body.done(), Ground.EnteredConsent.class)
                    .consentId();
        });
        if (back.isPresent()) {
            return shown(page, siteId, back.get());
        }
        Soon.readable(() -> sites.consent(made[0]));
        next.addFlashAttribute(
                "done", given ? "The consent is in the books." : "It is noted that the owner was asked.");
        return "redirect:/consents/" + made[0];
    }

    private static Map<String, Object> contact(Form form) {
        Map<String, Object> contact = new LinkedHashMap<>();
        contact.put("name", form.text("contactName"));
        contact.put("phone", form.text("contactPhone"));
        contact.put("email", form.text("contactEmail"));
        contact.put("address", form.text("contactAddress"));
        return contact;
    }

    @GetMapping("/consents/{consentId}")
    String one(@PathVariable String consentId, Model page, @ModelAttribute("desk") Desk desk) {
        return one(page, desk, consentId, Entered.fresh(Map.of()));
    }

    private String one(Model page, Desk desk, String consentId, Entered entered) {
        Ground.WholeConsent whole = sites.consent(consentId);
        page.addAttribute("whole", whole);
        page.addAttribute("holds", whole.consent().holdsOn(desk.days().today()));
        page.addAttribute(
                "contact", desk.may("LEAD") ? sites.contact(whole.consent().contactId()) : null);
        page.addAttribute("activities", ACTIVITIES);
        page.addAttribute("pests", care.book().pestNames());
        page.addAttribute("entered", entered);
        return "consent";
    }

    @PostMapping("/consents/{consentId}/{what:give|renew|withdraw|decline}")
    String go(
            @PathVariable String consentId,
            @PathVariable String what,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Ground.WholeConsent before = sites.consent(consentId);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Form.Body body = form.body().text("from", "until", "how", "reason");
            if (what.equals("give")) {
                Ground.Consent asked = before.consent();
                sites.tell()
                        .send(
                                "/consents/give",
                                body.put("consentId", consentId)
                                        .put("siteId", asked.siteId())
                                        .put("contactId", asked.contactId())
                                        .put("activities", asked.scope().activities())
                                        .put("pests", asked.scope().pests())
                                        .put("area", asked.scope().area())
                                        .done());
            } else {
                sites.tell().send("/consents/" + consentId + "/" + what, body.done());
            }
        });
        if (back.isPresent()) {
            return one(page, desk, consentId, back.get());
        }
        Soon.until(() ->
                sites.consent(consentId).history().size() > before.history().size());
        next.addFlashAttribute("done", "It is in the books.");
        return "redirect:/consents/" + consentId;
    }

    @PostMapping("/consents/{consentId}/erase-contact")
    String erase(
            @PathVariable String consentId, @RequestParam MultiValueMap<String, String> sent, RedirectAttributes next) {
        sites.tell()
                .send(
                        "/consent-contacts/"
                                + sites.consent(consentId).consent().contactId() + "/erase",
                        new Form(sent).body().done());
        next.addFlashAttribute("done", "Name, phone and address are gone for good. The history of the consent stays.");
        return "redirect:/consents/" + consentId;
    }

    @GetMapping("/consents.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Ground.Consent>()
                .column("consent_id", Ground.Consent::consentId)
                .column("site_id", Ground.Consent::siteId)
                .column("site", Ground.Consent::siteName)
                .column("state", Ground.Consent::state)
                .column(
                        "activities",
                        consent -> String.join(" ", consent.scope().activities()))
                .column("pests", consent -> String.join(" ", consent.scope().pests()))
                .column("valid_from", Ground.Consent::validFrom)
                .column("valid_until", Ground.Consent::validUntil)
                .column("withdrawn_from", Ground.Consent::withdrawnFrom)
                .file("consents", ending, sites.allConsents());
    }
}
