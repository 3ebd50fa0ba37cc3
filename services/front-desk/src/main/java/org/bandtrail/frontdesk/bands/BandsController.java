package org.bandtrail.frontdesk.bands;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.Visits;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The round, the list of bands, one band, and what to do for a stuck animal. */
@Controller
class BandsController {
    private static final int PAGE = 100;
    private static final int ROUND = 40;
    private final SiteInstalls installs;
    private final Inspections inspections;

    BandsController(SiteInstalls installs, Inspections inspections) {
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
            @RequestParam(defaultValue = "up") String state,
            @RequestParam(defaultValue = "") String after) {
        String asked = state.equals("all") ? "" : state;
        Rows<Installs.Band> bands =
                installs.bands(Map.of("q", q, "site", site, "state", asked, "after", after, "limit", PAGE));
        page.addAttribute("bands", bands.rows());
        page.addAttribute("next", bands.next());
        page.addAttribute("sites", installs.sites());
        page.addAttribute("q", q);
        page.addAttribute("site", site);
        page.addAttribute("state", state);
        return "bands";
    }

    @GetMapping("/bands.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending, @RequestParam(defaultValue = "") String site) {
        return new Listing<Installs.Band>()
                .column("band_id", Installs.Band::bandId)
                .column("tree_id", Installs.Band::treeId)
                .column("site_id", Installs.Band::siteId)
                .column("state", Installs.Band::state)
                .column("fitted_at", Installs.Band::fittedAt)
                .column("person_id", Installs.Band::personId)
                .column("tape_reel_id", Installs.Band::tapeReelId)
                .column("tape_mm", Installs.Band::tapeMm)
                .column("mesh_reel_id", Installs.Band::meshReelId)
                .column("mesh_mm", Installs.Band::meshMm)
                .column("pieces", Installs.Band::pieces)
                .column("height_mm", Installs.Band::heightMm)
                .column("must_remove_by", Installs.Band::mustRemoveBy)
                .file("bands", ending, installs.allBands(Map.of("site", site)));
    }

    @GetMapping("/bands/{bandId}")
    String band(@PathVariable String bandId, Model page) {
        page.addAttribute("band", installs.band(bandId));
        Optional<Visits.WholeBand> looks = looks(bandId);
        page.addAttribute("looks", looks.map(Visits.WholeBand::band).orElse(null));
        page.addAttribute("visits", looks.map(Visits.WholeBand::visits).orElse(List.of()));
        page.addAttribute("flagWords", Answers.FLAGS);
        page.addAttribute("animal", looks.map(BandsController::visitWithAnimal).orElse(null));
        page.addAttribute("stages", Answers.STAGES);
        page.addAttribute("answers", Answers.WORDS);
        return "band";
    }

    /** Empty if inspections has not heard of the band yet, which takes a moment after it was fitted. */
    private Optional<Visits.WholeBand> looks(String bandId) {
        try {
            return Optional.of(inspections.band(bandId));
        } catch (NeighbourRefused unknown) {
            if (unknown.status() != 404) {
                throw unknown;
            }
            return Optional.empty();
        }
    }

    /** The latest visit that found an animal; null if none did. Visits come newest first. */
    private static @Nullable String visitWithAnimal(Visits.WholeBand band) {
        return band.visits().stream()
                .filter(visit -> visit.bycatch() != null && visit.bycatch().seen())
                .map(Visits.Visit::visitId)
                .findFirst()
                .orElse(null);
    }
}
