package org.bandtrail.frontdesk.trees;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
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

/** Sites: the list, and adding one. */
@Controller
class SitesController {
    private final SiteInstalls installs;

    SitesController(SiteInstalls installs) {
        this.installs = installs;
    }

    @GetMapping("/sites")
    String sites(Model page) {
        page.addAttribute("sites", installs.sites());
        return "sites";
    }

    @GetMapping("/sites.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Installs.Site>()
                .column("site_id", Installs.Site::siteId)
                .column("name", Installs.Site::name)
                .column("latitude", Installs.Site::lat)
                .column("longitude", Installs.Site::lon)
                .column("trees", Installs.Site::trees)
                .column("bands_up", Installs.Site::bandsUp)
                .file("sites", ending, installs.sites());
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
                () -> installs.tell()
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
        Soon.until(
                () -> installs.sites().stream().anyMatch(site -> site.siteId().equals(form.identity("siteId"))));
        next.addFlashAttribute("done", form.text("name") + " is on the list. Its trees can come in now.");
        return "redirect:/sites";
    }
}
