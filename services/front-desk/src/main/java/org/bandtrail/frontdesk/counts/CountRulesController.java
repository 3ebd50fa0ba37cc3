package org.bandtrail.frontdesk.counts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Counted;
import org.bandtrail.frontdesk.neighbours.depot.Counting;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How the programme counts: the rules that hold with their source, and changing them. */
@Controller
class CountRulesController {
    private static final String[] FIGURES = {
        "toleranceMm",
        "tolerancePieces",
        "tolerancePermille",
        "secondPersonFromMinor",
        "shareA",
        "shareB",
        "daysA",
        "daysB",
        "daysC"
    };
    private final Counting counting;

    CountRulesController(Counting counting) {
        this.counting = counting;
    }

    @GetMapping("/counts/rules")
    String rules(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/counts/rules")
    String set(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts/rules",
                                form.body()
                                        .text("source", "reason")
                                        .put("rules", figures(form))
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> counting.rules().reason().equals(form.text("reason")));
        next.addFlashAttribute("done", "These rules hold for every count that is opened from now on.");
        return "redirect:/counts/rules";
    }

    private static Map<String, Object> figures(Form form) {
        Map<String, Object> figures = new LinkedHashMap<>();
        for (String figure : FIGURES) {
            if (!form.has(figure)) {
                throw new UnfitForm("The field %s is empty. Every figure is needed.".formatted(figure));
            }
            figures.put(figure, form.whole(figure));
        }
        figures.put("basis", form.text("basis"));
        return figures;
    }

    private String shown(Model page, Entered entered) {
        Counted.RulesInForce now = counting.rules();
        page.addAttribute("now", now);
        page.addAttribute("r", now.rules());
        page.addAttribute("entered", entered);
        return "count-rules";
    }
}
