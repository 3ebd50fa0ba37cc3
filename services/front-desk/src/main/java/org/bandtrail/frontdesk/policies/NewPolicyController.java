package org.bandtrail.frontdesk.policies;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A new version of the policy: begins from another one and is asked about before it is published. */
@Controller
class NewPolicyController {
    private final Policies policies;

    NewPolicyController(Policies policies) {
        this.policies = policies;
    }

    @GetMapping("/policies/new")
    String fresh(
            @RequestParam(required = false) @Nullable Integer from, Model page, @ModelAttribute("desk") Desk desk) {
        return shown(page, Entered.fresh(Map.of()), begun(from), desk);
    }

    @PostMapping("/policies")
    String publish(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Policies.Whole from = begun(form.has("from") ? (Integer) Math.toIntExact(form.whole("from")) : null);
        int before = policies.versions().size();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> version = version(form, from);
            if (!form.text("confirmed").equals("yes")) {
                ask(version);
            }
            policies.publish(version);
        });
        if (back.isPresent()) {
            return shown(page, back.get(), from, desk);
        }
        Soon.until(() -> policies.versions().size() > before);
        next.addFlashAttribute("done", "Published. Bands that are up keep the version they were fitted under.");
        return "redirect:/policies";
    }

    private void ask(Map<String, Object> version) {
        List<Problem.Question> questions = policies.check(version).questions();
        if (!questions.isEmpty()) {
            throw new PleaseConfirm(questions);
        }
    }

    private Policies.Whole begun(@Nullable Integer from) {
        return from == null ? policies.inForce() : policies.version(from, null);
    }

    private static Map<String, Object> version(Form form, Policies.Whole from) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Policies.Value value : from.values()) {
            String field = value.guide().name().replaceAll("Mm$", "");
            switch (value.guide().unit()) {
                case "mm" -> values.put(field, form.length(field));
                case "word" -> values.put(field, form.text(field));
                case "yes-no" -> values.put(field, form.text(field).equals("true"));
                default -> values.put(field, form.whole(field));
            }
        }
        return form.body()
                .text("validFrom", "validUntil", "programme", "pest", "source", "reason")
                .put("values", values)
                .done();
    }

    private String shown(Model page, Entered entered, Policies.Whole from, Desk desk) {
        page.addAttribute("entered", entered);
        page.addAttribute("from", from.policy());
        page.addAttribute("lines", ValueLine.of(from.values(), desk.figures()));
        page.addAttribute("today", desk.days().today());
        return "policy-new";
    }
}
