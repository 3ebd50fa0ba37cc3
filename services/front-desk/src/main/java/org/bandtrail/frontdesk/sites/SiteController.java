package org.bandtrail.frontdesk.sites;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.removals.RemovalAlarm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** One site: what it is, whether one may work there, and the page on which it is changed. */
@Controller
class SiteController {
    private final Sites sites;
    private final RemovalAlarm removal;
    private final TreeCare care;

    SiteController(Sites sites, RemovalAlarm removal, TreeCare care) {
        this.sites = sites;
        this.removal = removal;
        this.care = care;
    }

    @GetMapping("/sites/{siteId}")
    String site(@PathVariable String siteId, Model page, @ModelAttribute("desk") Desk desk) {
        Ground.Whole whole = sites.one(siteId);
        LocalDate today = desk.days().today();
        List<Ground.Consent> consents = sites.consents(siteId);
        page.addAttribute("whole", whole);
        page.addAttribute("consents", consents);
        page.addAttribute("pests", care.book().pestNames());
        page.addAttribute("today", today);
        page.addAttribute("removal", removal.atSite(siteId, desk.days()));
        page.addAttribute("allowed", longest(consents, today));
        page.addAttribute("area", Areas.words(whole.areaDm2(), desk.metric()));
        page.addAttribute("areaStored", Areas.stored(whole.areaDm2()));
        page.addAttribute("drawing", whole.boundary() == null ? null : SiteDrawing.of(whole.boundary()));
        return "site";
    }

    /** The consent that holds today and lasts longest, null if none holds. */
    private static Ground.@Nullable Consent longest(List<Ground.Consent> consents, LocalDate today) {
        return consents.stream()
                .filter(consent -> consent.holdsOn(today))
                .max(java.util.Comparator.comparing(SiteController::end))
                .orElse(null);
    }

    private static LocalDate end(Ground.Consent consent) {
        return consent.validUntil() == null ? LocalDate.MAX : consent.validUntil();
    }

    @GetMapping("/sites/{siteId}/change")
    String change(@PathVariable String siteId, Model page) {
        return shown(page, sites, siteId, Entered.fresh(Map.of()));
    }

    /** The page on which a site is changed, with what was typed into one of its forms. */
    static String shown(Model page, Sites sites, String siteId, Entered entered) {
        page.addAttribute("whole", sites.one(siteId));
        page.addAttribute("kinds", sites.hazardKinds());
        page.addAttribute(
                "weekdays", List.of("MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY", "SUNDAY"));
        page.addAttribute("entered", entered);
        return "site-change";
    }
}
