package org.bandtrail.frontdesk.landedcosts;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.LandedCosts;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.bandtrail.kernel.Money;
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

/** Freight and duty: the list, one amount, and spreading one after a look at what each line would bear. */
@Controller
class LandedCostsController {
    private static final int PAGE = 100;
    private final Invoicing invoicing;

    LandedCostsController(Invoicing invoicing) {
        this.invoicing = invoicing;
    }

    @GetMapping("/landed-costs")
    String list(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<LandedCosts.Row> rows = invoicing.landedCosts(Map.of("after", after, "limit", PAGE));
        page.addAttribute("rows", rows.rows());
        page.addAttribute("next", rows.next());
        return "landed-costs";
    }

    @GetMapping("/landed-costs.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<LandedCosts.Row>()
                .column("landed_cost_id", LandedCosts.Row::landedCostId)
                .column("what", LandedCosts.Row::what)
                .column("currency", row -> row.amount().currency())
                .column("amount_minor", row -> row.amount().minor())
                .column("basis", LandedCosts.Row::basis)
                .column("deliveries", LandedCosts.Row::deliveries)
                .column("invoice_id", LandedCosts.Row::invoiceId)
                .column("reference", LandedCosts.Row::reference)
                .column("spread_at", LandedCosts.Row::spreadAt)
                .column("taken_back_because", LandedCosts.Row::takenBackBecause)
                .file("freight-and-duty", ending, invoicing.allLandedCosts());
    }

    @GetMapping("/landed-costs/new")
    String spread(
            Model page,
            @RequestParam(defaultValue = "") String invoice,
            @RequestParam(defaultValue = "0") long amount,
            @RequestParam(defaultValue = "USD") String currency) {
        Map<String, String> filled = new LinkedHashMap<>();
        filled.put("invoiceId", invoice);
        filled.put("amountCurrency", currency);
        if (amount > 0) {
            int digits = Money.zero(currency).minorDigits();
            filled.put("amount", BigDecimal.valueOf(amount, digits).toPlainString());
        }
        return form(page, Entered.fresh(filled));
    }

    /** Looks first; spreads when the button says so. */
    @PostMapping("/landed-costs")
    String spread(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        boolean look = !form.text("act").equals("spread");
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> body = body(form);
            if (look) {
                page.addAttribute("preview", invoicing.landedPreview(body));
            } else {
                invoicing.tell().send("/landed-costs", spreading(form, body));
            }
        });
        if (look || back.isPresent()) {
            return form(page, back.orElseGet(() -> new Entered(sent, null)));
        }
        String id = form.identity("landedCostId");
        Soon.readable(() -> invoicing.landedCost(id));
        next.addFlashAttribute("done", desk.figures().money(form.money("amount")) + " is spread over the goods.");
        return "redirect:/landed-costs/" + id;
    }

    @GetMapping("/landed-costs/{landedCostId}")
    String one(@PathVariable String landedCostId, Model page) {
        return shown(landedCostId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/landed-costs/{landedCostId}/take-back")
    String takeBack(
            @PathVariable String landedCostId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> invoicing
                        .tell()
                        .send(
                                "/landed-costs/" + landedCostId + "/take-back",
                                new Form(sent).body().text("reason").done()));
        if (back.isPresent()) {
            return shown(landedCostId, page, back.get());
        }
        Soon.until(() -> invoicing.landedCost(landedCostId).landedCost().takenBackBecause() != null);
        next.addFlashAttribute("done", "It is taken back; every share was taken off again.");
        return "redirect:/landed-costs/" + landedCostId;
    }

    private static Map<String, Object> body(Form form) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("amount", form.money("amount"));
        body.put("basis", form.text("basis"));
        body.put("deliveries", form.filled("delivery"));
        return body;
    }

    private static Map<String, Object> spreading(Form form, Map<String, Object> body) {
        Map<String, Object> whole = form.body()
                .text("landedCostId", "what", "invoiceId", "reference")
                .done();
        whole.putAll(body);
        return whole;
    }

    private String form(Model page, Entered entered) {
        List<LandedCosts.Delivery> deliveries = invoicing.deliveries();
        page.addAttribute("deliveries", deliveries);
        page.addAttribute("entered", entered);
        return "landed-cost-new";
    }

    private String shown(String landedCostId, Model page, Entered entered) {
        LandedCosts.Whole whole = invoicing.landedCost(landedCostId);
        page.addAttribute("whole", whole);
        page.addAttribute("cost", whole.landedCost());
        page.addAttribute("entered", entered);
        return "landed-cost";
    }
}
