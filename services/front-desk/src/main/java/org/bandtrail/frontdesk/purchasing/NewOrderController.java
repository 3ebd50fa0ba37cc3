package org.bandtrail.frontdesk.purchasing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Bought;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Placing an order: first the supplier, then how much by which quote, or by hand. */
@Controller
class NewOrderController {
    private final Purchasing purchasing;
    private final SupplyStock stock;

    NewOrderController(Purchasing purchasing, SupplyStock stock) {
        this.purchasing = purchasing;
        this.stock = stock;
    }

    /** What is wanted may come along from the page of what to order: item, depot, and quantity in mm or pieces. */
    @GetMapping("/orders/new")
    String form(
            Model page,
            @RequestParam(defaultValue = "") String supplier,
            @RequestParam(defaultValue = "") String material,
            @RequestParam(defaultValue = "") String depot,
            @RequestParam(defaultValue = "0") long quantity) {
        List<Bought.Quoted> offers = material.isEmpty() ? List.of() : purchasing.quotes(material);
        List<String> sellers =
                offers.stream().map(Bought.Quoted::supplierId).distinct().toList();
        String chosen = supplier.isEmpty() && sellers.size() == 1 ? sellers.getFirst() : supplier;
        MultiValueMap<String, String> filled = new LinkedMultiValueMap<>();
        filled.add("supplierId", chosen);
        filled.add("depotId", depot);
        offers.stream()
                .filter(offer -> offer.supplierId().equals(chosen) && quantity > 0)
                .findFirst()
                .ifPresent(offer -> filled.add("units-" + offer.quote(), String.valueOf(offer.unitsFor(quantity))));
        page.addAttribute("offers", offers);
        page.addAttribute("material", material);
        page.addAttribute("quantity", quantity);
        return shown(page, new Entered(filled, null));
    }

    @PostMapping("/orders")
    String place(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> purchasing
                        .tell()
                        .send(
                                "/purchases",
                                form.body()
                                        .text("purchaseId", "supplierId", "depotId", "expectedOn")
                                        .put("lines", lines(form))
                                        .done()));
        if (back.isPresent()) {
            page.addAttribute("offers", List.of());
            page.addAttribute("material", "");
            page.addAttribute("quantity", 0L);
            return shown(page, back.get());
        }
        String order = form.identity("purchaseId");
        Soon.readable(() -> purchasing.order(order));
        next.addFlashAttribute("done", "Order " + order + " is placed.");
        return "redirect:/orders/" + order;
    }

    private static List<Map<String, Object>> lines(Form form) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (String quote : form.filled("quote")) {
            String units = form.text("units-" + quote);
            if (!units.isEmpty()) {
                Map<String, Object> line = new LinkedHashMap<>();
                line.put("quote", Form.whole("quote", quote));
                line.put("units", Form.whole("units", units));
                lines.add(line);
            }
        }
        if (form.has("handUnits")) {
            Map<String, Object> line = new LinkedHashMap<>(OrderUnits.codes(form.text("handUnit")));
            line.put("materialCode", form.text("handMaterial"));
            line.put("units", form.whole("handUnits"));
            line.put("content", form.text("handContent"));
            line.put("unitPrice", form.money("handPrice"));
            lines.add(line);
        }
        for (Map<String, Object> line : lines) {
            putIfFilled(line, "siteId", form);
            putIfFilled(line, "grant", form);
        }
        return lines;
    }

    private static void putIfFilled(Map<String, Object> line, String field, Form form) {
        if (form.has(field)) {
            line.put(field, form.text(field));
        }
    }

    private String shown(Model page, Entered entered) {
        String supplier = entered.value("supplierId");
        page.addAttribute("suppliers", purchasing.suppliers());
        page.addAttribute(
                "quotes",
                supplier.isEmpty()
                        ? List.of()
                        : purchasing.supplier(supplier).quotes().stream()
                                .filter(Bought.Quoted::holds)
                                .toList());
        page.addAttribute("supplierId", supplier);
        page.addAttribute("depots", stock.depots());
        page.addAttribute("items", stock.items());
        page.addAttribute("entered", entered);
        return "order-new";
    }
}
