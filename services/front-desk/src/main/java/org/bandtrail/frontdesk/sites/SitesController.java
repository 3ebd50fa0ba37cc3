package org.bandtrail.frontdesk.sites;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.MediaType;
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
import tools.jackson.databind.json.JsonMapper;

/** Sites: the list with what must be done about consents, and adding one. */
@Controller
class SitesController {
    private final Sites sites;
    private final JsonMapper json;

    SitesController(Sites sites, JsonMapper json) {
        this.sites = sites;
        this.json = json;
    }

    /** A site beside its standing. */
    record Line(Ground.Site site, String standing, boolean warns) {}

    @GetMapping("/sites")
    String sites(Model page, @ModelAttribute("desk") Desk desk) {
        Ground.Standings standings = sites.standings(desk.days().today());
        Map<String, Ground.Standing> bySite = new LinkedHashMap<>();
        standings.rows().forEach(row -> bySite.put(row.siteId(), row));
        StandingWords words = new StandingWords(desk.days());
        List<Line> lines = sites.all().stream()
                .map(site -> line(site, bySite.get(site.siteId()), words))
                .toList();
        page.addAttribute("lines", lines);
        page.addAttribute(
                "warnings",
                standings.rows().stream().filter(Ground.Standing::warns).toList());
        page.addAttribute("warning", standings.warning());
        page.addAttribute("words", words);
        return "sites";
    }

    private static Line line(
            Ground.Site site, Ground.@org.jspecify.annotations.Nullable Standing standing, StandingWords words) {
        return standing == null
                ? new Line(site, "not known yet", false)
                : new Line(site, words.of(standing), standing.warns());
    }

    @GetMapping("/sites.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Ground.Site>()
                .column("site_id", Ground.Site::siteId)
                .column("name", Ground.Site::name)
                .column("latitude", Ground.Site::lat)
                .column("longitude", Ground.Site::lon)
                .column("trees", Ground.Site::trees)
                .column("bands_up", Ground.Site::bandsUp)
                .column("area_dm2", Ground.Site::areaDm2)
                .column("closed_on", Ground.Site::closedOn)
                .file("sites", ending, sites.all());
    }

    @GetMapping("/sites.geojson")
    ResponseEntity<byte[]> geoJson() {
        return Listing.saved(
                "sites.geojson",
                MediaType.parseMediaType("application/geo+json"),
                json.writeValueAsBytes(sites.geoJson()));
    }

    @GetMapping("/sites/new")
    String form(Model page) {
        page.addAttribute("entered", Entered.fresh(Map.of()));
        return "site-new";
    }

    @PostMapping("/sites")
    String add(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> sites.tell()
                        .send(
                                "/sites",
                                form.body()
                                        .text("siteId", "name", "accessNotes")
                                        .decimal("lat", "lon")
                                        .done()));
        if (back.isPresent()) {
            page.addAttribute("entered", back.get());
            return "site-new";
        }
        Soon.until(() -> sites.all().stream().anyMatch(site -> site.siteId().equals(form.identity("siteId"))));
        next.addFlashAttribute("done", form.text("name") + " is on the list. Its trees can come in now.");
        return "redirect:/sites";
    }
}
