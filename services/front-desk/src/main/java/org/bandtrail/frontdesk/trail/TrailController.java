package org.bandtrail.frontdesk.trail;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.Stock;
import org.bandtrail.frontdesk.neighbours.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The home page. */
@Controller
class TrailController {
    private final SupplyStock stock;

    TrailController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/")
    String trail(Model page, @ModelAttribute("desk") Desk desk) {
        Stock.Trail trail = stock.trail();
        List<Flow> flows = List.of(
                Flow.of("tape", "Tape", trail.tape()),
                Flow.of("mesh", "Mesh", trail.mesh()),
                Flow.of("fastener", "Fasteners", trail.fasteners()));
        page.addAttribute("flows", flows);
        page.addAttribute("drawings", Drawn.all(flows, desk.figures()));
        page.addAttribute("shown", TrailDrawing.shown(flows));
        page.addAttribute("audit", trail.audit());
        return "trail";
    }
}
