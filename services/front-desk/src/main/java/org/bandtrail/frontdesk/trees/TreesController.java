package org.bandtrail.frontdesk.trees;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
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

/** Trees: the list, one tree, and adding one. */
@Controller
class TreesController {
    private static final int PAGE = 100;
    private final SiteInstalls installs;

    TreesController(SiteInstalls installs) {
        this.installs = installs;
    }

    @GetMapping("/trees")
    String trees(
            Model page,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String after) {
        Rows<Installs.Tree> trees = installs.trees(Map.of("q", q, "site", site, "after", after, "limit", PAGE));
        page.addAttribute("trees", trees.rows());
        page.addAttribute("next", trees.next());
        page.addAttribute("sites", installs.sites());
        page.addAttribute("q", q);
        page.addAttribute("site", site);
        return "trees";
    }

    @GetMapping("/trees.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending, @RequestParam(defaultValue = "") String site) {
        return new Listing<Installs.Tree>()
                .column("tree_id", Installs.Tree::treeId)
                .column("site_id", Installs.Tree::siteId)
                .column("tag", Installs.Tree::tag)
                .column("species", Installs.Tree::species)
                .column("girth_mm", Installs.Tree::girthMm)
                .column("girth_measured_at", Installs.Tree::girthMeasuredAt)
                .column("bands_up", Installs.Tree::bandsUp)
                .file("trees", ending, installs.allTrees(Map.of("site", site)));
    }

    @GetMapping("/trees/{treeId}")
    String tree(@PathVariable String treeId, Model page) {
        page.addAttribute("tree", installs.tree(treeId));
        return "tree";
    }

    @GetMapping("/trees/new")
    String form(Model page, @RequestParam(defaultValue = "") String site) {
        return shown(page, Entered.fresh(Map.of("siteId", site)));
    }

    @PostMapping("/trees")
    String add(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> installs.tell()
                        .send(
                                "/trees",
                                form.body()
                                        .text("treeId", "siteId", "tag", "species")
                                        .length("girth", "dbh")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.readable(() -> installs.tree(form.identity("treeId")));
        next.addFlashAttribute("done", "Tree " + form.text("tag") + " is on the list of its site.");
        return "redirect:/trees?site=" + form.identity("siteId");
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("sites", installs.sites());
        page.addAttribute("entered", entered);
        return "tree-new";
    }
}
