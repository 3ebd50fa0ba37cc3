package org.bandtrail.frontdesk.invoices;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.Papers;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of invoices: first what waits for somebody. */
@Controller
class InboxController {
    private static final int PAGE = 100;
    private static final List<String> STATES =
            List.of("open", "waiting", "held", "approved once", "part approved", "approved", "withdrawn", "all");
    private final Invoicing invoicing;

    InboxController(Invoicing invoicing) {
        this.invoicing = invoicing;
    }

    @GetMapping("/invoices")
    String invoices(
            Model page,
            @RequestParam(defaultValue = "open") String state,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(Map.of("q", q, "after", after, "limit", PAGE));
        asked.put("state", state.equals("all") ? "" : state);
        Rows<Papers.Invoice> invoices = invoicing.invoices(asked);
        page.addAttribute("invoices", invoices.rows());
        page.addAttribute("next", invoices.next());
        page.addAttribute("names", names(invoicing));
        page.addAttribute("states", STATES);
        page.addAttribute("state", state);
        page.addAttribute("q", q);
        return "invoices";
    }

    /** Names of suppliers by identity. */
    static Map<String, String> names(Invoicing invoicing) {
        return invoicing.suppliers().stream()
                .collect(Collectors.toMap(Papers.Supplier::supplierId, Papers.Supplier::name));
    }

    @GetMapping("/invoices.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Papers.Invoice>()
                .column("invoice_id", Papers.Invoice::invoiceId)
                .column("supplier_id", Papers.Invoice::supplierId)
                .column("kind", Papers.Invoice::kind)
                .column("number", Papers.Invoice::number)
                .column("issued_on", Papers.Invoice::issuedOn)
                .column("due_on", Papers.Invoice::dueOn)
                .column("currency", invoice -> invoice.payable().currency())
                .column("tax_minor", invoice -> invoice.tax().minor())
                .column("payable_minor", invoice -> invoice.payable().minor())
                .column("approved_minor", invoice -> invoice.approved().minor())
                .column("state", Papers.Invoice::state)
                .column("held_because", Papers.Invoice::heldBecause)
                .column("credits", Papers.Invoice::credits)
                .column("registered_at", Papers.Invoice::registeredAt)
                .file("invoices", ending, invoicing.allInvoices());
    }
}
