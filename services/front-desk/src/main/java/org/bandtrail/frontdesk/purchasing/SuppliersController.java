package org.bandtrail.frontdesk.purchasing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Bought;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
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

/** Suppliers and what they quoted. */
@Controller
class SuppliersController {
    private final Purchasing purchasing;
    private final SupplyStock stock;

    SuppliersController(Purchasing purchasing, SupplyStock stock) {
        this.purchasing = purchasing;
        this.stock = stock;
    }

    @GetMapping("/suppliers")
    String suppliers(Model page) {
        return listed(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/suppliers.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Bought.Supplier>()
                .column("supplier_id", Bought.Supplier::supplierId)
                .column("name", Bought.Supplier::name)
                .column("quotes", Bought.Supplier::openQuotes)
                .file("suppliers", ending, purchasing.suppliers());
    }

    @PostMapping("/suppliers")
    String register(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> purchasing
                        .tell()
                        .send(
                                "/suppliers",
                                form.body().text("supplierId", "name").done()));
        if (back.isPresent()) {
            return listed(page, back.get());
        }
        String supplier = form.identity("supplierId");
        Soon.readable(() -> purchasing.supplier(supplier));
        next.addFlashAttribute("done", form.text("name") + " is registered. Note what they quoted.");
        return "redirect:/suppliers/" + supplier;
    }

    @GetMapping("/suppliers/{supplierId}")
    String supplier(@PathVariable String supplierId, Model page) {
        return shown(supplierId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/suppliers/{supplierId}/quotes")
    String quote(
            @PathVariable String supplierId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        int before = purchasing.supplier(supplierId).quotes().size();
        Optional<Entered> back = Entered.unlessDone(
                sent, () -> purchasing.tell().send("/suppliers/" + supplierId + "/quotes", quoteOf(form)));
        if (back.isPresent()) {
            return shown(supplierId, page, back.get());
        }
        Soon.until(() -> purchasing.supplier(supplierId).quotes().size() > before);
        next.addFlashAttribute("done", "The quote is noted; orders can be placed by it.");
        return "redirect:/suppliers/" + supplierId;
    }

    private static Map<String, Object> quoteOf(Form form) {
        List<Map<String, Object>> prices = new ArrayList<>();
        form.lines("fromUnits", "price").forEach((line, parts) -> {
            String from = parts.getOrDefault("fromUnits", "");
            if (!from.isEmpty()) {
                prices.add(Map.of(
                        "fromUnits",
                        Form.whole("fromUnits", from),
                        "unitPrice",
                        Form.money("price", parts.getOrDefault("price", ""), form.text("priceCurrency"))));
            }
        });
        Form.Body body = form.body()
                .text("materialCode", "content", "validFrom", "validUntil", "reference")
                .whole("packUnits", "minimumUnits", "leadTimeDays")
                .put("prices", prices);
        OrderUnits.codes(form.text("unit")).forEach(body::put);
        return body.done();
    }

    @PostMapping("/suppliers/{supplierId}/quotes/{quote}/withdraw")
    String withdraw(
            @PathVariable String supplierId,
            @PathVariable int quote,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> purchasing
                        .tell()
                        .send(
                                "/suppliers/" + supplierId + "/quotes/" + quote + "/withdraw",
                                new Form(sent).body().text("reason").done()));
        if (back.isPresent()) {
            return shown(supplierId, page, back.get());
        }
        Soon.until(() -> purchasing.supplier(supplierId).quotes().stream()
                .anyMatch(each -> each.quote() == quote && each.withdrawn()));
        next.addFlashAttribute("done", "Quote " + quote + " is withdrawn.");
        return "redirect:/suppliers/" + supplierId;
    }

    private String listed(Model page, Entered entered) {
        page.addAttribute("suppliers", purchasing.suppliers());
        page.addAttribute("entered", entered);
        return "suppliers";
    }

    private String shown(String supplierId, Model page, Entered entered) {
        page.addAttribute("supplier", purchasing.supplier(supplierId));
        page.addAttribute("items", stock.items());
        page.addAttribute("entered", entered);
        return "supplier";
    }
}
