package org.bandtrail.frontdesk.purchasing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Bought;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Receiving a delivery on one page, against an order or without. */
@Controller
class ReceivingController {
    private static final int ROWS_AT_MOST = 60;
    private static final int ROWS_WITHOUT_ORDER = 6;
    private final Purchasing purchasing;
    private final SupplyStock stock;

    ReceivingController(Purchasing purchasing, SupplyStock stock) {
        this.purchasing = purchasing;
        this.stock = stock;
    }

    /**
     * One row to fill.
     *
     * @param line key of its line
     * @param number proposed identity
     */
    record Row(String line, String number) {}

    @GetMapping("/deliveries/new")
    String form(
            Model page,
            @RequestParam(defaultValue = "") String order,
            @RequestParam(defaultValue = "") String supplier,
            @RequestParam(defaultValue = "" + ROWS_WITHOUT_ORDER) int rows) {
        return shown(page, order.strip(), supplier, rows, Entered.fresh(Map.of()));
    }

    @PostMapping("/deliveries")
    String receive(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent, () -> purchasing.tell().send("/deliveries", new DeliveryBody(form).of(desk.days())));
        if (back.isPresent()) {
            int rows = sent.getOrDefault("rowLine", List.of()).size();
            return shown(page, form.text("purchaseId"), form.text("supplierId"), rows, back.get());
        }
        String delivery = form.identity("deliveryId");
        Soon.readable(() -> purchasing.delivery(delivery));
        next.addFlashAttribute("done", "Delivery " + delivery + " is received. Print the labels and stick them on.");
        return "redirect:/deliveries/" + delivery;
    }

    private String shown(Model page, String order, String supplier, int rows, Entered entered) {
        page.addAttribute("entered", entered);
        page.addAttribute("depots", stock.depots());
        page.addAttribute("items", stock.items());
        if (!order.isEmpty()) {
            return againstOrder(page, purchasing.order(order));
        }
        page.addAttribute("suppliers", purchasing.suppliers());
        page.addAttribute("supplierId", supplier);
        page.addAttribute("rows", Math.clamp(rows, 1, ROWS_AT_MOST));
        page.addAttribute(
                "numbers",
                supplier.isEmpty() ? List.of() : purchasing.numbers(supplier, Math.clamp(rows, 1, ROWS_AT_MOST)));
        return "delivery-free";
    }

    private String againstOrder(Model page, Bought.WholeOrder whole) {
        List<Row> rows = new ArrayList<>();
        for (Bought.OrderLine line : whole.lines()) {
            int wanted = Math.clamp(rowsFor(line), 1, ROWS_AT_MOST);
            for (int row = 0; row < wanted; row++) {
                rows.add(new Row(String.valueOf(line.line()), ""));
            }
        }
        List<String> numbers = purchasing.numbers(whole.purchase().supplierId(), rows.size());
        List<Row> numbered = new ArrayList<>();
        for (int index = 0; index < rows.size(); index++) {
            numbered.add(new Row(rows.get(index).line(), numbers.get(index)));
        }
        page.addAttribute("order", whole.purchase());
        page.addAttribute("lines", whole.lines());
        page.addAttribute("rows", numbered);
        return "delivery-order";
    }

    private static long rowsFor(Bought.OrderLine line) {
        if (!line.reels()) {
            return 1;
        }
        return line.unit().equals("reel") ? line.remainingUnits() : ROWS_WITHOUT_ORDER;
    }
}
