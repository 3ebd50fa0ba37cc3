package org.bandtrail.frontdesk.trees;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.removals.RemovalAlarm;
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

    /** What the list can be narrowed to, with the words for it. */
    private static final Map<String, String> CHOICES = choices();

    private final SiteInstalls installs;
    private final TreeCare care;
    private final RemovalAlarm removal;

    TreesController(SiteInstalls installs, TreeCare care, RemovalAlarm removal) {
        this.removal = removal;
        this.installs = installs;
        this.care = care;
    }

    @GetMapping("/trees")
    String trees(
            Model page,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String only,
            @RequestParam(defaultValue = "") String after) {
        Rows<Installs.Tree> trees =
                installs.trees(Map.of("q", q, "site", site, "only", only, "after", after, "limit", PAGE));
        page.addAttribute("trees", trees.rows());
        page.addAttribute("next", trees.next());
        page.addAttribute("sites", installs.sites());
        page.addAttribute("q", q);
        page.addAttribute("site", site);
        page.addAttribute("only", only);
        page.addAttribute("choices", CHOICES);
        return "trees";
    }

    @GetMapping("/trees.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String only) {
        return new Listing<Installs.Tree>()
                .column("tree_id", Installs.Tree::treeId)
                .column("site_id", Installs.Tree::siteId)
                .column("tag", Installs.Tree::tag)
                .column("species", Installs.Tree::species)
                .column("species_code", Installs.Tree::speciesCode)
                .column("latitude", Installs.Tree::lat)
                .column("longitude", Installs.Tree::lon)
                .column("girth_mm", Installs.Tree::girthMm)
                .column("girth_height_mm", Installs.Tree::girthHeightMm)
                .column("girth_measured_at", Installs.Tree::girthMeasuredAt)
                .column("bands_up", Installs.Tree::bandsUp)
                .column("gone_at", Installs.Tree::goneAt)
                .column("gone_how", Installs.Tree::goneHow)
                .column("part_of", Installs.Tree::mergedInto)
                .column("note", Installs.Tree::note)
                .file("trees", ending, installs.allTrees(Map.of("site", site, "only", only)));
    }

    @GetMapping("/trees/{treeId}")
    String tree(@PathVariable String treeId, Model page, @ModelAttribute("desk") Desk desk) {
        Installs.Tree tree = installs.tree(treeId);
        TreeCare.Book book = care.book();
        page.addAttribute("tree", tree);
        page.addAttribute("bands", installs.allBands(Map.of("tree", tree.treeId())));
        page.addAttribute("removal", removal.onTree(tree.treeId(), desk.days()));
        page.addAttribute("drawing", GirthDrawing.of(tree.history() == null ? List.of() : tree.history()));
        page.addAttribute("kinds", book.kinds());
        page.addAttribute("pests", book.pestNames());
        page.addAttribute("checks", care.checks(treeId));
        page.addAttribute("findings", care.findings(Map.of("tree", treeId)).rows());
        page.addAttribute("photos", care.photos("tree", treeId));
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
                                        .text("treeId", "siteId", "tag", "species", "speciesCode", "note")
                                        .length("girth", "dbh", "girthHeight")
                                        .decimal("lat", "lon")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.readable(() -> installs.tree(form.identity("treeId")));
        next.addFlashAttribute("done", "Tree " + form.text("tag") + " is on the list of its site.");
        return "redirect:/trees?site=" + form.identity("siteId");
    }

    private static Map<String, String> choices() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("STANDING", "trees that stand");
        choices.put("UNMEASURED", "never measured");
        choices.put("UNBANDED", "without a band");
        choices.put("NO_POSITION", "without a position");
        choices.put("NO_CODE", "without a species code");
        choices.put("GONE", "gone");
        choices.put("MERGED", "part of another");
        return choices;
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("sites", installs.sites());
        page.addAttribute("species", care.book().species());
        page.addAttribute("entered", entered);
        return "tree-new";
    }
}
