package org.bandtrail.frontdesk.invoices;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.LandedCosts;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How much an invoice may differ before a person decides. */
@Controller
class TolerancesController {
    private static final String[] LIMITS = {
        "quantityPermille", "lengthMm", "pieces", "pricePermille", "priceMinor", "secondPersonFromMinor"
    };
    private static final int NEWEST = 100;
    private final Invoicing invoicing;

    TolerancesController(Invoicing invoicing) {
        this.invoicing = invoicing;
    }

    @GetMapping("/tolerances")
    String tolerances(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/tolerances")
    String set(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        int before = invoicing.policies().size();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> limits = new LinkedHashMap<>();
            for (String limit : LIMITS) {
                limits.put(limit, form.whole(limit));
            }
            invoicing
                    .tell()
                    .send(
                            "/tolerances",
                            form.body()
                                    .text("source", "reason")
                                    .put("tolerances", limits)
                                    .done());
        });
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> invoicing.policies().size() > before);
        next.addFlashAttribute("done", "These limits hold from now on; the old ones stay below.");
        return "redirect:/tolerances";
    }

    private String shown(Model page, Entered entered) {
        List<LandedCosts.Policy> policies = invoicing.policies();
        page.addAttribute("policies", policies);
        page.addAttribute("now", policies.getFirst());
        page.addAttribute("currencies", currencies());
        page.addAttribute("entered", entered);
        return "tolerances";
    }

    /** What the newest invoices are in: the limits count smallest units of whatever an invoice is in. */
    private List<String> currencies() {
        List<String> used = invoicing.invoices(Map.of("limit", NEWEST)).rows().stream()
                .map(invoice -> invoice.payable().currency())
                .distinct()
                .toList();
        return used.isEmpty() ? List.of("USD") : used;
    }
}
