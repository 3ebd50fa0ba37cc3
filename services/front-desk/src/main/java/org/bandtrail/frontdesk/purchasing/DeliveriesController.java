package org.bandtrail.frontdesk.purchasing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Bought;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
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

/** Deliveries: the list, one delivery, and accepting or sending back what was set aside. */
@Controller
class DeliveriesController {
    private static final int PAGE = 50;
    private final Purchasing purchasing;

    DeliveriesController(Purchasing purchasing) {
        this.purchasing = purchasing;
    }

    @GetMapping("/deliveries")
    String deliveries(
            Model page,
            @RequestParam(defaultValue = "false") boolean waiting,
            @RequestParam(defaultValue = "") String after) {
        Rows<Bought.Delivery> deliveries =
                purchasing.deliveries(Map.of("waiting", waiting, "after", after, "limit", PAGE));
        page.addAttribute("deliveries", deliveries.rows());
        page.addAttribute("next", deliveries.next());
        page.addAttribute("waiting", waiting);
        page.addAttribute(
                "aside",
                deliveries.rows().stream().mapToLong(Bought.Delivery::setAside).sum());
        page.addAttribute(
                "open", purchasing.orders(Map.of("open", true, "limit", PAGE)).rows());
        return "deliveries";
    }

    @GetMapping("/deliveries.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Bought.Delivery>()
                .column("delivery", Bought.Delivery::deliveryId)
                .column("supplier_id", Bought.Delivery::supplierId)
                .column("supplier", Bought.Delivery::supplierName)
                .column("order", Bought.Delivery::purchaseId)
                .column("depot_id", Bought.Delivery::depotId)
                .column("delivery_note", Bought.Delivery::deliveryNote)
                .column("delivered_at", Bought.Delivery::deliveredAt)
                .column("received_by", Bought.Delivery::personId)
                .column("reels", Bought.Delivery::reels)
                .column("batches", Bought.Delivery::batches)
                .column("set_aside", Bought.Delivery::setAside)
                .column("findings", Bought.Delivery::findings)
                .file("deliveries", ending, purchasing.allDeliveries());
    }

    @GetMapping("/deliveries/{deliveryId}")
    String delivery(@PathVariable String deliveryId, Model page) {
        return shown(deliveryId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/deliveries/{deliveryId}/{change:accept|send-back}")
    String change(
            @PathVariable String deliveryId,
            @PathVariable String change,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        List<String> keys = form.filled("key");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> purchasing
                        .tell()
                        .send(
                                "/deliveries/" + deliveryId + "/" + change,
                                form.body()
                                        .text("bin", "reason")
                                        .put("keys", keys)
                                        .done()));
        if (back.isPresent()) {
            return shown(deliveryId, page, back.get());
        }
        String state = change.equals("accept") ? "accepted" : "sent back";
        Soon.until(() -> purchasing.delivery(deliveryId).lines().stream()
                .flatMap(line -> line.pieces().stream())
                .filter(piece -> keys.contains(piece.key()))
                .allMatch(piece -> piece.state().equals(state)));
        next.addFlashAttribute("done", (keys.size() == 1 ? "One is " : keys.size() + " are ") + state + ".");
        return "redirect:/deliveries/" + deliveryId;
    }

    private String shown(String deliveryId, Model page, Entered entered) {
        Bought.WholeDelivery whole = purchasing.delivery(deliveryId);
        page.addAttribute("delivery", whole.delivery());
        page.addAttribute("lines", whole.lines());
        page.addAttribute("findings", whole.findings());
        page.addAttribute("sheets", purchasing.sheets());
        page.addAttribute("entered", entered);
        return "delivery";
    }
}
