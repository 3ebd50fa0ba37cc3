package org.bandtrail.frontdesk.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** What one device takes on one trunk: pieces with their calculation, and what to mind. Nothing is kept. */
@Controller
class ProposalPages {
    private static final String STICKY_BAND = "sticky-band";
    private final Policies policies;
    private final SiteInstalls installs;

    ProposalPages(Policies policies, SiteInstalls installs) {
        this.policies = policies;
        this.installs = installs;
    }

    /**
     * What was worked out.
     *
     * @param tree null if a girth was typed
     * @param standOffMm of the guard, null for a kind without one that stands off
     */
    record Shown(
            Policies.Kind kind,
            Policies.Needed needed,
            Installs.@Nullable Tree tree,
            @Nullable Long standOffMm,
            List<String> cautions) {}

    @GetMapping("/proposal")
    String proposal(@RequestParam MultiValueMap<String, String> sent, Model page, @ModelAttribute("desk") Desk desk) {
        List<Policies.Kind> kinds = policies.kinds();
        Form form = new Form(sent);
        AtomicReference<@Nullable Shown> shown = new AtomicReference<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            if (form.has("tree") || form.has("girth")) {
                shown.set(shown(form, kinds, desk));
            }
        });
        page.addAttribute("kinds", kinds);
        page.addAttribute("shown", shown.get());
        page.addAttribute("entered", back.orElse(new Entered(sent, null)));
        return "proposal";
    }

    private Shown shown(Form form, List<Policies.Kind> kinds, Desk desk) {
        String code = form.has("device") ? form.text("device") : STICKY_BAND;
        Policies.Kind kind = kinds.stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new UnfitForm("[%s] is no kind of device. Choose one of the list.".formatted(code)));
        Map<String, Object> asked = new TreeMap<>();
        asked.put("measure", desk.metric() ? "metric" : "imperial");
        ask(asked, "on", form, "day");
        ask(asked, "programme", form, "programme");
        ask(asked, "pest", form, "pest");
        Installs.Tree tree = form.has("girth") ? null : installs.tree(form.identity("tree"));
        asked.put("girth", tree == null ? String.valueOf(form.length("girth")) : girth(tree));
        Policies.Needed needed = policies.pieces(code, asked);
        List<String> cautions = new ArrayList<>();
        Long standOff = null;
        if (code.equals(STICKY_BAND)) {
            Installs.Proposal proposal = installs.proposal(asked);
            cautions.addAll(proposal.cautions());
            standOff = proposal.standOffMm();
        }
        kind.cautions().stream().filter(each -> !cautions.contains(each)).forEach(cautions::add);
        return new Shown(kind, needed, tree, standOff, cautions);
    }

    private static String girth(Installs.Tree tree) {
        if (tree.girthMm() == null) {
            throw new UnfitForm(
                    "Nobody has measured tree [%s] yet. Measure it, or give a girth.".formatted(tree.treeId()));
        }
        return tree.girthMm() + " mm";
    }

    private static void ask(Map<String, Object> asked, String name, Form form, String field) {
        if (form.has(field)) {
            asked.put(name, form.text(field));
        }
    }
}
