package org.bandtrail.frontdesk.bands;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.Visits;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.removals.RemovalAlarm;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The round, the list of bands, and what to do for a stuck animal. */
@Controller
class BandsController {
    private static final int PAGE = 100;
    private static final int ROUND = 40;
    private final SiteInstalls installs;
    private final Inspections inspections;
    private final Policies policies;
    private final RemovalAlarm removal;

    BandsController(SiteInstalls installs, Inspections inspections, Policies policies, RemovalAlarm removal) {
        this.policies = policies;
        this.removal = removal;
        this.installs = installs;
        this.inspections = inspections;
    }

    @GetMapping("/round")
    String round(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String after) {
        Rows<Visits.DueBand> due = inspections.bands(
                Map.of("due", desk.days().today().toString(), "site", site, "after", after, "limit", ROUND));
        List<Installs.Site> sites = installs.sites();
        page.addAttribute("due", due.rows());
        page.addAttribute("next", due.next());
        page.addAttribute("sites", sites);
        page.addAttribute(
                "names", sites.stream().collect(Collectors.toMap(Installs.Site::siteId, Installs.Site::name)));
        page.addAttribute("site", site);
        page.addAttribute(
                "removal", site.isBlank() ? removal.everywhere(desk.days()) : removal.atSite(site, desk.days()));
        return "round";
    }

    @GetMapping("/stuck-animal")
    String stuckAnimal() {
        return "stuck-animal";
    }

    @GetMapping("/bands")
    String bands(
            Model page,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String tree,
            @RequestParam(defaultValue = "up") String state,
            @RequestParam(defaultValue = "") String device,
            @RequestParam(defaultValue = "") String due,
            @RequestParam(defaultValue = "") String after) {
        Asked asked = new Asked(q, site, tree, state, device, due);
        Map<String, Object> whole = new HashMap<>(asked.parameters());
        whole.put("after", after);
        whole.put("limit", PAGE);
        Rows<Installs.Band> bands = installs.bands(whole);
        page.addAttribute("bands", bands.rows());
        page.addAttribute("next", bands.next());
        page.addAttribute("sites", installs.sites());
        page.addAttribute("kinds", policies.kinds());
        page.addAttribute("asked", asked);
        page.addAttribute("state", state);
        return "bands";
    }

    /** What the list is narrowed to; empty texts narrow nothing. */
    record Asked(String q, String site, String tree, String state, String device, String due) {
        Map<String, String> parameters() {
            String shown = state.equals("all") ? "" : state;
            return Map.of("q", q, "site", site, "tree", tree, "state", shown, "device", device, "due", due);
        }
    }

    @GetMapping("/bands.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String tree,
            @RequestParam(defaultValue = "all") String state,
            @RequestParam(defaultValue = "") String device,
            @RequestParam(defaultValue = "") String due) {
        return BandSheet.file(ending, installs.allBands(new Asked(q, site, tree, state, device, due).parameters()));
    }
}
