package org.bandtrail.frontdesk.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.depot.Tracing;
import org.bandtrail.frontdesk.neighbours.money.Books;
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

/** Shows the audit and passes on how a finding was settled. */
@Controller
class AuditController {
    private final SupplyStock stock;
    private final Tracing tracing;

    AuditController(SupplyStock stock, Tracing tracing) {
        this.stock = stock;
        this.tracing = tracing;
    }

    @GetMapping("/audit")
    String audit(@RequestParam(defaultValue = "false") boolean recount, Model page) {
        return shown(page, recount ? tracing.recount() : stock.audit(), Entered.fresh(Map.of()));
    }

    @GetMapping("/audit.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Books.Finding>()
                .column("what", Books.Finding::what)
                .column("material", Books.Finding::material)
                .column("reel_or_batch", Books.Finding::id)
                .column("place", Books.Finding::place)
                .column("person_id", Books.Finding::personId)
                .column("quantity", Books.Finding::quantity)
                .column("unit", Books.Finding::unit)
                .column("since", Books.Finding::since)
                .file("audit-findings", ending, stock.audit().findings());
    }

    @PostMapping("/audit/settle")
    String settle(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/discrepancies/settle",
                                form.body()
                                        .text("material", "id", "place", "reason")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, stock.audit(), back.get());
        }
        Soon.until(() -> stock.audit().findings().stream()
                .noneMatch(finding -> finding.id().equals(form.text("id"))
                        && form.text("place").equals(finding.place())));
        next.addFlashAttribute("done", "Settled: " + form.text("id") + ", with your reason beside it.");
        return "redirect:/audit";
    }

    private static String shown(Model page, Books.Audit audit, Entered entered) {
        page.addAttribute("audit", audit);
        Books.Recount recount = audit.recount();
        page.addAttribute(
                "wrong",
                recount == null
                        ? List.of()
                        : recount.sums().stream()
                                .filter(sum -> sum.difference() != 0)
                                .toList());
        page.addAttribute(
                "whole", audit.laws().stream().filter(AuditController::first).toList());
        page.addAttribute(
                "stations", audit.laws().stream().filter(law -> !first(law)).toList());
        page.addAttribute("entered", entered);
        return "audit";
    }

    /** Laws shown first: those over everything, and any that does not hold. The others open on demand. */
    private static boolean first(Books.Law law) {
        return law.difference() != 0 || !law.name().contains(":") || law.name().endsWith(": everything");
    }
}
