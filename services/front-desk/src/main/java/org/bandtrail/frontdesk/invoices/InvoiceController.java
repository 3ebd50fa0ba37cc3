package org.bandtrail.frontdesk.invoices;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.Papers;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One invoice: ordered, received and billed line by line, and what a person decides about it. */
@Controller
class InvoiceController {
    private final Invoicing invoicing;

    InvoiceController(Invoicing invoicing) {
        this.invoicing = invoicing;
    }

    @GetMapping("/invoices/{invoiceId}")
    String invoice(@PathVariable String invoiceId, Model page) {
        return shown(invoiceId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/invoices/{invoiceId}/approve")
    String approve(
            @PathVariable String invoiceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        List<Papers.Outcome> outcome = new ArrayList<>();
        String path = "/invoices/" + invoiceId + "/approve";
        return done(invoiceId, sent, page, next, () -> {
            outcome.add(invoicing.tell().post(path, new Form(sent).body().done(), Papers.Outcome.class));
            Papers.Outcome done = outcome.getFirst();
            String amount = desk.figures().money(done.toPay());
            if (done.secondPersonNeeded()) {
                return amount + " is approved by you. Another person has to approve it as well.";
            }
            return done.carried().isEmpty()
                    ? amount + " is approved for payment."
                    : amount + " is approved for payment; the difference to the receipts went to "
                            + desk.figures().count((long) done.carried().size()) + " reels and batches.";
        });
    }

    /** Hold, accept, pay only what came, or pay nothing: the button that was pressed says which. */
    @PostMapping("/invoices/{invoiceId}/decide")
    String decide(
            @PathVariable String invoiceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        boolean hold = form.text("how").equals("HOLD");
        String path = "/invoices/" + invoiceId + (hold ? "/hold" : "/settle");
        return done(invoiceId, sent, page, next, () -> {
            invoicing
                    .tell()
                    .send(
                            path,
                            form.body()
                                    .text("line", "reason")
                                    .text(hold ? "" : "how")
                                    .done());
            return hold ? "It is held back from payment." : "That is settled.";
        });
    }

    @PostMapping("/invoices/{invoiceId}/bills")
    String bills(
            @PathVariable String invoiceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Map<String, Object> choice = Bills.choice(
                form.text("line"), form.text("bills"), form.has("priceOnly"), form.text("quantityInBooks"));
        boolean order = choice.containsKey("purchaseId");
        return done(invoiceId, sent, page, next, () -> {
            Map<String, Object> body = form.body().text("line").done();
            if (order) {
                choice.remove("use");
                body.putAll(choice);
            } else {
                body.put("use", choice.get("use"));
            }
            invoicing.tell().send("/invoices/" + invoiceId + (order ? "/link" : "/sort"), body);
            return "Line " + form.text("line") + " is matched anew.";
        });
    }

    @PostMapping("/invoices/{invoiceId}/withdraw")
    String withdraw(
            @PathVariable String invoiceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        return done(invoiceId, sent, page, next, () -> {
            invoicing
                    .tell()
                    .send(
                            "/invoices/" + invoiceId + "/withdraw",
                            new Form(sent).body().text("reason").done());
            return "The invoice is withdrawn; the same paper can come in again.";
        });
    }

    /** Does it, waits until it is seen, and says what was done. */
    private String done(
            String invoiceId,
            MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            Supplier<String> work) {
        int before = invoicing.invoice(invoiceId).history().size();
        List<String> said = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> said.add(work.get()));
        if (back.isPresent()) {
            return shown(invoiceId, page, back.get());
        }
        Soon.until(() -> invoicing.invoice(invoiceId).history().size() > before);
        next.addFlashAttribute("done", said.getFirst());
        return "redirect:/invoices/" + invoiceId;
    }

    private String shown(String invoiceId, Model page, Entered entered) {
        Papers.Whole whole = invoicing.invoice(invoiceId);
        Papers.Invoice invoice = whole.invoice();
        page.addAttribute("whole", whole);
        page.addAttribute("invoice", invoice);
        page.addAttribute(
                "wrong", whole.matches().stream().filter(match -> !match.fine()).count());
        page.addAttribute(
                "chargesMinor",
                whole.charges().stream()
                        .mapToLong(each -> each.amount().minor())
                        .sum());
        String supplier = invoice.supplierId();
        page.addAttribute("supplier", InboxController.names(invoicing).getOrDefault(supplier, supplier));
        page.addAttribute("orderLines", invoicing.orderLines(invoice.supplierId()));
        page.addAttribute("entered", entered);
        return "invoice";
    }
}
