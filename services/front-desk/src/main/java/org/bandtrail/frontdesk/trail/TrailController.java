package org.bandtrail.frontdesk.trail;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.removals.RemovalAlarm;
import org.bandtrail.frontdesk.sites.ConsentAlarm;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The home page, and what is at each kind of place. */
@Controller
class TrailController {
    private static final int PAGE = 100;
    private static final int WHOLE = 1_000;
    private final SupplyStock stock;
    private final RemovalAlarm removal;
    private final ConsentAlarm consents;

    TrailController(SupplyStock stock, RemovalAlarm removal, ConsentAlarm consents) {
        this.stock = stock;
        this.removal = removal;
        this.consents = consents;
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
        page.addAttribute("audit", stock.audit());
        page.addAttribute("unknown", trail.unknown());
        page.addAttribute("removal", desk.may("LEAD") ? removal.everywhere(desk.days()) : null);
        page.addAttribute("owners", desk.may("LEAD") ? consents.today(desk.days()) : null);
        return "trail";
    }

    @GetMapping("/where")
    String where(
            Model page,
            @RequestParam(defaultValue = "depot") String at,
            @RequestParam(defaultValue = "") String after) {
        String begin = at + ":";
        Rows<Stock.AtPlace> places = stock.atPlaces(after.isEmpty() ? begin : after, PAGE);
        List<Stock.AtPlace> here = places.rows().stream()
                .filter(place -> place.place().startsWith(begin))
                .toList();
        page.addAttribute("at", at);
        page.addAttribute("places", here);
        page.addAttribute("next", here.size() == places.rows().size() ? places.next() : null);
        page.addAttribute("kinds", Flow.KINDS);
        return "where";
    }

    @GetMapping("/where.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        List<Stock.AtPlace> places = new ArrayList<>();
        String after = "";
        while (after != null) {
            Rows<Stock.AtPlace> rows = stock.atPlaces(after, WHOLE);
            places.addAll(rows.rows());
            after = rows.next();
        }
        return new Listing<Stock.AtPlace>()
                .column("place", Stock.AtPlace::place)
                .column("tape_mm", Stock.AtPlace::tapeMm)
                .column("mesh_mm", Stock.AtPlace::meshMm)
                .column("pieces", Stock.AtPlace::pieces)
                .file("whereabouts", ending, places);
    }
}
