package org.bandtrail.frontdesk.hostchecks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
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

/** The host check of one tree, and the bands on trees that did not pass one. */
@Controller
class HostCheckController {
    private static final int PAGE = 100;
    private final SiteInstalls installs;
    private final TreeCare care;

    HostCheckController(SiteInstalls installs, TreeCare care) {
        this.installs = installs;
        this.care = care;
    }

    @GetMapping("/trees/{treeId}/host-check")
    String ask(
            @PathVariable String treeId,
            @RequestParam(defaultValue = "") String pest,
            @RequestParam(required = false) String @Nullable [] a,
            Model page) {
        List<String> given = a == null ? List.of() : Arrays.asList(a);
        return shown(page, treeId, pest, given, Entered.fresh(Map.of()));
    }

    @PostMapping("/trees/{treeId}/host-check")
    String store(
            @PathVariable String treeId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<String> given = form.filled("a");
        int before = care.checks(treeId).size();
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> care.tell()
                        .send(
                                "/host-checks",
                                form.body()
                                        .text("pest")
                                        .put("treeId", treeId)
                                        .put("answers", answers(given))
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, treeId, form.text("pest"), given, back.get());
        }
        Soon.until(() -> care.checks(treeId).size() > before);
        next.addFlashAttribute("done", "The host check is stored with your answers.");
        return "redirect:/trees/" + treeId;
    }

    @GetMapping("/host-checks")
    String findings(
            Model page, @RequestParam(defaultValue = "") String site, @RequestParam(defaultValue = "") String after) {
        Rows<TreeCare.Finding> findings = care.findings(Map.of("site", site, "after", after, "limit", PAGE));
        page.addAttribute("findings", findings.rows());
        page.addAttribute("next", findings.next());
        page.addAttribute("sites", installs.sites());
        page.addAttribute("site", site);
        return "host-checks";
    }

    @GetMapping("/host-checks.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending, @RequestParam(defaultValue = "") String site) {
        return new Listing<TreeCare.Finding>()
                .column("band_id", TreeCare.Finding::bandId)
                .column("tree_id", TreeCare.Finding::treeId)
                .column("site_id", TreeCare.Finding::siteId)
                .column("finding", TreeCare.Finding::finding)
                .column("what_to_do", TreeCare.Finding::message)
                .file("host-checks", ending, care.allFindings(Map.of("site", site)));
    }

    private String shown(Model page, String treeId, String pest, List<String> given, Entered entered) {
        String asked = pest.isBlank() ? care.keys().getFirst().pest() : pest;
        page.addAttribute("tree", installs.tree(treeId));
        page.addAttribute("pest", asked);
        page.addAttribute("given", given);
        page.addAttribute("before", given.isEmpty() ? List.of() : given.subList(0, given.size() - 1));
        page.addAttribute("step", care.next(asked, answers(given)));
        page.addAttribute("kinds", care.book().kinds());
        page.addAttribute("entered", entered);
        return "host-check";
    }

    /** Each answer is written {@code question:answer}; what is not so is for the service to name. */
    private static List<TreeCare.Answer> answers(List<String> given) {
        List<TreeCare.Answer> answers = new ArrayList<>();
        for (String each : given) {
            int colon = each.indexOf(':');
            answers.add(
                    colon < 0
                            ? new TreeCare.Answer(each, "")
                            : new TreeCare.Answer(each.substring(0, colon), each.substring(colon + 1)));
        }
        return answers;
    }
}
