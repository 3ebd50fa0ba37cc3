package org.bandtrail.frontdesk.purchasing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Bought;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
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

/** Orders: the list, one order, and what is done with it. */
@Controller
class OrdersController {
    private static final int PAGE = 50;
    private final Purchasing purchasing;

    OrdersController(Purchasing purchasing) {
        this.purchasing = purchasing;
    }

    @GetMapping("/orders")
    String orders(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "false") boolean all,
            @RequestParam(defaultValue = "") String after) {
        Rows<Bought.Order> orders = purchasing.orders(Map.of("open", !all, "after", after, "limit", PAGE));
        page.addAttribute("orders", orders.rows());
        page.addAttribute("next", orders.next());
        page.addAttribute("all", all);
        page.addAttribute(
                "late",
                orders.rows().stream().filter(order -> late(order, desk)).toList());
        return "orders";
    }

    private static boolean late(Bought.Order order, Desk desk) {
        return order.open() && order.expectedOn().isBefore(desk.days().today());
    }

    @GetMapping("/orders.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Bought.Order>()
                .column("order", Bought.Order::purchaseId)
                .column("supplier_id", Bought.Order::supplierId)
                .column("supplier", Bought.Order::supplierName)
                .column("depot_id", Bought.Order::depotId)
                .column("state", Bought.Order::state)
                .column("ordered_at", Bought.Order::orderedAt)
                .column("expected_on", Bought.Order::expectedOn)
                .column("total_minor", order -> order.total().minor())
                .column("committed_minor", order -> order.committed().minor())
                .column("currency", order -> order.total().currency())
                .file("orders", ending, purchasing.allOrders());
    }

    @GetMapping("/orders/{orderId}")
    String order(@PathVariable String orderId, Model page) {
        return shown(orderId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/orders/{orderId}/{change:expect|close|cancel}")
    String change(
            @PathVariable String orderId,
            @PathVariable String change,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> purchasing
                        .tell()
                        .send(
                                "/purchases/" + orderId + "/" + change,
                                new Form(sent)
                                        .body()
                                        .text("reason", "expectedOn")
                                        .done()));
        if (back.isPresent()) {
            return shown(orderId, page, back.get());
        }
        String reason = new Form(sent).text("reason");
        Soon.until(() -> reason.equals(purchasing.order(orderId).purchase().reason()));
        next.addFlashAttribute("done", "Order " + orderId + " is changed: " + reason);
        return "redirect:/orders/" + orderId;
    }

    private String shown(String orderId, Model page, Entered entered) {
        Bought.WholeOrder whole = purchasing.order(orderId);
        List<Bought.Delivery> deliveries = purchasing
                .deliveries(Map.of("purchase", orderId, "limit", PAGE))
                .rows();
        page.addAttribute("order", whole.purchase());
        page.addAttribute("lines", whole.lines());
        page.addAttribute("deliveries", deliveries);
        page.addAttribute("entered", entered);
        return "order";
    }
}
