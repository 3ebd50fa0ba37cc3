package org.bandtrail.frontdesk.trees;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a crew does at a tree: measure it, correct what the register says, note that it is gone or stands after all. */
@Controller
class TreeWorkController {
    private final SiteInstalls installs;
    private final TreeCare care;

    TreeWorkController(SiteInstalls installs, TreeCare care) {
        this.installs = installs;
        this.care = care;
    }

    @GetMapping("/trees/{treeId}/measure")
    String measure(@PathVariable String treeId, Model page) {
        return shown("tree-measure", treeId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/trees/{treeId}/girths")
    String measured(
            @PathVariable String treeId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> body = form.body()
                    .length("girth", "dbh", "height")
                    .happened(desk.days())
                    .done();
            if (!form.text("confirmed").equals("yes")) {
                askAboutSlips(treeId, form);
            }
            installs.tell().send("/trees/" + treeId + "/girths", body);
        });
        if (back.isPresent()) {
            return shown("tree-measure", treeId, page, back.get());
        }
        int before = steps(form);
        return done(treeId, next, "The girth is in the history of the tree.", tree -> steps(tree) > before);
    }

    private void askAboutSlips(String treeId, Form form) {
        Map<String, Object> measured = new HashMap<>();
        for (String field : List.of("girth", "dbh")) {
            if (form.has(field)) {
                measured.put(field, form.length(field));
            }
        }
        List<Problem.Question> questions = care.girthQuestions(treeId, measured);
        if (!questions.isEmpty()) {
            throw new PleaseConfirm(questions);
        }
    }

    @GetMapping("/trees/{treeId}/correct")
    String correct(@PathVariable String treeId, Model page) {
        Installs.Tree tree = installs.tree(treeId);
        Map<String, String> known = new HashMap<>();
        known.put("siteId", tree.siteId());
        known.put("tag", tree.tag() == null ? "" : tree.tag());
        known.put("species", tree.species() == null ? "" : tree.species());
        known.put("speciesCode", tree.speciesCode() == null ? "" : tree.speciesCode());
        known.put("lat", tree.lat() == null ? "" : tree.lat().toString());
        known.put("lon", tree.lon() == null ? "" : tree.lon().toString());
        known.put("note", tree.note() == null ? "" : tree.note());
        return shown("tree-correct", treeId, page, Entered.fresh(known));
    }

    @PostMapping("/trees/{treeId}/correct")
    String corrected(
            @PathVariable String treeId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> installs.tell()
                        .send(
                                "/trees/" + treeId + "/corrections",
                                form.body()
                                        .text("siteId", "tag", "species", "speciesCode", "note", "reason")
                                        .decimal("lat", "lon")
                                        .done()));
        if (back.isPresent()) {
            return shown("tree-correct", treeId, page, back.get());
        }
        int before = steps(form);
        return done(treeId, next, "Corrected. What it said before is in the history.", tree -> steps(tree) > before);
    }

    @GetMapping("/trees/{treeId}/gone")
    String gone(@PathVariable String treeId, Model page) {
        return shown("tree-gone", treeId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/trees/{treeId}/gone")
    String isGone(
            @PathVariable String treeId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> installs.tell()
                        .send(
                                "/trees/" + treeId + "/gone",
                                form.body()
                                        .text("how", "reason")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown("tree-gone", treeId, page, back.get());
        }
        return done(treeId, next, "The books say that the tree is gone.", tree -> tree.goneAt() != null);
    }

    @PostMapping("/trees/{treeId}/found-again")
    String foundAgain(
            @PathVariable String treeId, @RequestParam MultiValueMap<String, String> sent, RedirectAttributes next) {
        installs.tell()
                .send(
                        "/trees/" + treeId + "/found-again",
                        new Form(sent).body().text("reason").done());
        return done(treeId, next, "The tree stands again in the books.", tree -> tree.goneAt() == null);
    }

    private String done(String treeId, RedirectAttributes next, String words, Predicate<Installs.Tree> seen) {
        Soon.until(() -> seen.test(installs.tree(treeId)));
        next.addFlashAttribute("done", words);
        return "redirect:/trees/" + treeId;
    }

    /** How many lines its history had when the form was opened. */
    private static int steps(Form form) {
        return form.has("steps") ? (int) form.whole("steps") : 0;
    }

    private static int steps(Installs.Tree tree) {
        return tree.history() == null ? 0 : tree.history().size();
    }

    private String shown(String template, String treeId, Model page, Entered entered) {
        Installs.Tree tree = installs.tree(treeId);
        page.addAttribute("tree", tree);
        page.addAttribute("steps", steps(tree));
        page.addAttribute("sites", installs.sites());
        page.addAttribute("species", care.book().species());
        page.addAttribute("entered", entered);
        return template;
    }
}
