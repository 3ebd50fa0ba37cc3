package org.bandtrail.frontdesk.trees;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreesTwice;
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

/** Trees that stand in the register twice: pair by pair, with what was decided of them. */
@Controller
class DuplicatesController {
    private static final int PAGE = 50;
    private final TreesTwice twice;
    private final SiteInstalls installs;

    DuplicatesController(TreesTwice twice, SiteInstalls installs) {
        this.twice = twice;
        this.installs = installs;
    }

    @GetMapping("/trees/duplicates")
    String pairs(
            Model page,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String after,
            @ModelAttribute("desk") Desk desk) {
        return shown(page, desk, site, after, Entered.fresh(Map.of()));
    }

    @GetMapping("/trees/duplicates.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @RequestParam(defaultValue = "") String site,
            @ModelAttribute("desk") Desk desk) {
        return new Listing<TreesTwice.Pair>()
                .column("tree_id", pair -> pair.first().treeId())
                .column("tag", pair -> pair.first().tag())
                .column("site_id", pair -> pair.first().siteId())
                .column("girth_mm", pair -> pair.first().girthMm())
                .column("other_tree_id", pair -> pair.second().treeId())
                .column("other_tag", pair -> pair.second().tag())
                .column("other_site_id", pair -> pair.second().siteId())
                .column("other_girth_mm", pair -> pair.second().girthMm())
                .column("same_tag", pair -> pair.sameTag() ? "yes" : "no")
                .column("distance_mm", TreesTwice.Pair::distanceMm)
                .column("girth_difference_mm", TreesTwice.Pair::girthDifferenceMm)
                .column("why", pair -> PairWords.why(pair, desk.figures()))
                .file("tree-duplicates", ending, twice.allFound(Map.of("site", site)));
    }

    @GetMapping("/trees/duplicates/decided.{ending:csv|xlsx}")
    ResponseEntity<byte[]> decided(@PathVariable String ending) {
        return new Listing<TreesTwice.Decision>()
                .column("tree_id", TreesTwice.Decision::first)
                .column("other_tree_id", TreesTwice.Decision::second)
                .column("decided", each -> each.kept() == null ? "two trees" : "one tree")
                .column("kept", TreesTwice.Decision::kept)
                .column("reason", TreesTwice.Decision::reason)
                .column("by", TreesTwice.Decision::by)
                .column("decided_at", TreesTwice.Decision::decidedAt)
                .file("tree-duplicates-decided", ending, twice.allDecisions());
    }

    @PostMapping("/trees/duplicates")
    String decide(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String kept = form.text("keep");
        boolean merging = !kept.isEmpty();
        String merged = kept.equals(form.text("first")) ? form.text("second") : form.text("first");
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            var body = form.body().text("reason");
            if (merging) {
                twice.tell()
                        .send(
                                "/tree-duplicates/merge",
                                body.put("kept", kept).put("merged", merged).done());
            } else {
                twice.tell()
                        .send(
                                "/tree-duplicates/apart",
                                body.text("first", "second").done());
            }
        });
        if (back.isPresent()) {
            return shown(page, desk, form.text("site"), "", back.get());
        }
        if (merging) {
            Soon.until(() -> installs.tree(merged).mergedInto() != null);
        }
        next.addFlashAttribute(
                "done",
                merging
                        ? "Tree %s is now part of %s. What is written for it shows there.".formatted(merged, kept)
                        : "They stay two trees and do not come up again.");
        next.addAttribute("site", form.text("site"));
        return "redirect:/trees/duplicates";
    }

    @PostMapping("/trees/duplicates/undo")
    String undo(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> twice.tell()
                        .send(
                                "/tree-duplicates/undo",
                                form.body().text("first", "second", "reason").done()));
        if (back.isPresent()) {
            return shown(page, desk, "", "", back.get());
        }
        Soon.until(() -> installs.tree(form.text("first")).mergedInto() == null
                && installs.tree(form.text("second")).mergedInto() == null);
        next.addFlashAttribute("done", "Taken back. The pair is open again.");
        return "redirect:/trees/duplicates";
    }

    /** A pair with why it is one. */
    record Line(TreesTwice.Pair pair, String why) {}

    private String shown(Model page, Desk desk, String site, String after, Entered entered) {
        TreesTwice.Found found = twice.found(Map.of("site", site, "after", after, "limit", PAGE));
        List<Line> lines = found.rows().stream()
                .map(pair -> new Line(pair, PairWords.why(pair, desk.figures())))
                .toList();
        Rows<TreesTwice.Decision> decided = twice.decisions(Map.of("limit", PAGE));
        page.addAttribute("lines", lines);
        page.addAttribute("next", found.next());
        page.addAttribute("rules", found.rules());
        page.addAttribute("decided", decided.rows());
        page.addAttribute("moreDecided", decided.next() != null);
        page.addAttribute("sites", installs.sites());
        page.addAttribute("site", site);
        page.addAttribute("entered", entered);
        return "tree-duplicates";
    }
}
