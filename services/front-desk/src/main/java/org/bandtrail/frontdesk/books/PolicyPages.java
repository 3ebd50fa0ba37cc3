package org.bandtrail.frontdesk.books;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Ledger;
import org.bandtrail.frontdesk.neighbours.money.LedgerReading;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How fasteners are valued, year by year. */
@Controller
class PolicyPages {
    private final LedgerReading ledger;

    PolicyPages(LedgerReading ledger) {
        this.ledger = ledger;
    }

    @GetMapping("/cost-policies")
    String policies(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/cost-policies.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Ledger.Policy>()
                .column("from_year", Ledger.Policy::year)
                .column("method", Ledger.Policy::method)
                .column("reason", Ledger.Policy::reason)
                .column("by", Ledger.Policy::byPerson)
                .column("set_at", Ledger.Policy::setAt)
                .column("replaced", Ledger.Policy::replaced)
                .file("cost-policies", ending, ledger.policies().rows());
    }

    @PostMapping("/cost-policies")
    String set(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> ledger.tell()
                        .send(
                                "/cost-policies",
                                form.body()
                                        .text("method", "reason")
                                        .whole("year")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> ledger.policies().rows().stream()
                .anyMatch(policy ->
                        policy.year() == form.whole("year") && policy.method().equals(form.text("method"))));
        next.addFlashAttribute("done", "Fasteners are valued so from %d on.".formatted(form.whole("year")));
        return "redirect:/cost-policies";
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("policies", ledger.policies());
        page.addAttribute("entered", entered);
        return "ledger-policies";
    }
}
