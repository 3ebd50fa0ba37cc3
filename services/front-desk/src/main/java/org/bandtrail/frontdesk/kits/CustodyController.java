package org.bandtrail.frontdesk.kits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Who has what: what was in the care of a person or a crew at any moment, as it was known then or is known now. */
@Controller
class CustodyController {
    private static final int PAGE = 200;
    private final Kits kits;
    private final SupplyStock stock;

    CustodyController(Kits kits, SupplyStock stock) {
        this.kits = kits;
        this.stock = stock;
    }

    @GetMapping("/custody")
    String custody(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String person,
            @RequestParam(defaultValue = "") String crew,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String knownAt,
            @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(asked(desk, person, crew, at, knownAt));
        asked.put("after", after);
        asked.put("limit", PAGE);
        Kit.Custody custody = kits.custody(asked);
        page.addAttribute("custody", custody);
        page.addAttribute(
                "people",
                custody.rows().stream().map(Kit.Held::personId).distinct().count());
        page.addAttribute("crews", stock.crews());
        page.addAttribute("person", person);
        page.addAttribute("crew", crew);
        page.addAttribute("at", at);
        page.addAttribute("knownAt", knownAt);
        return "custody";
    }

    @GetMapping("/custody.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String person,
            @RequestParam(defaultValue = "") String crew,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String knownAt) {
        List<Kit.Held> rows = kits.allCustody(asked(desk, person, crew, at, knownAt));
        return new Listing<Kit.Held>()
                .column("person_id", Kit.Held::personId)
                .column("reel_or_batch", Kit.Held::id)
                .column("material_code", Kit.Held::materialCode)
                .column("unit", Kit.Held::unit)
                .column("with_person", Kit.Held::withPerson)
                .column("missing", Kit.Held::missing)
                .column("kit_id", Kit.Held::kitId)
                .column("handed_out_at", Kit.Held::handedOutAt)
                .column("moved_at", Kit.Held::movedAt)
                .file("custody", ending, rows);
    }

    private static Map<String, String> asked(Desk desk, String person, String crew, String at, String knownAt) {
        Map<String, String> asked = new HashMap<>(Map.of("person", person, "crew", crew));
        if (!at.isBlank()) {
            asked.put("at", desk.days().entered(at).toString());
        }
        if (!knownAt.isBlank()) {
            asked.put("knownAt", desk.days().entered(knownAt).toString());
        }
        return asked;
    }
}
