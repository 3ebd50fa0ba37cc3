package org.bandtrail.frontdesk.kits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Kits by state, and one kit with its pick sheet and settlement. */
@Controller
class KitsController {
    private static final int PAGE = 50;
    private static final List<String> STATES = List.of("reserved", "out", "settled", "lapsed", "released");
    private final Kits kits;
    private final CutPlanning cutting;

    KitsController(Kits kits, CutPlanning cutting) {
        this.kits = kits;
        this.cutting = cutting;
    }

    @GetMapping("/kits")
    String kits(
            Model page, @RequestParam(defaultValue = "") String state, @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(Map.of("state", state, "after", after, "limit", PAGE));
        Rows<Kit.Life> rows = kits.kits(asked);
        page.addAttribute("kits", rows.rows());
        page.addAttribute("next", rows.next());
        page.addAttribute("state", state);
        page.addAttribute("states", STATES);
        page.addAttribute("waiting", count("reserved"));
        page.addAttribute("out", count("out"));
        return "kits";
    }

    private int count(String state) {
        return kits.kits(Map.of("state", state, "limit", 1000)).rows().size();
    }

    @GetMapping("/kits.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Kit.Life>()
                .column("kit_id", Kit.Life::kitId)
                .column("state", Kit.Life::state)
                .column("depot_id", Kit.Life::depotId)
                .column("crew_id", Kit.Life::crewId)
                .column("person_id", Kit.Life::personId)
                .column("reserved_at", Kit.Life::reservedAt)
                .column("reserved_until", Kit.Life::until)
                .column("handed_out_at", Kit.Life::handedOutAt)
                .column("signed_at", Kit.Life::signedAt)
                .column("settled_at", Kit.Life::settledAt)
                .column("reopened", Kit.Life::reopened)
                .file("kits", ending, kits.all());
    }

    @GetMapping("/kits/{kitId}")
    String kit(@PathVariable String kitId, Model page) {
        PackedFor.plan(kitId)
                .ifPresent(plan -> page.addAttribute("cut", cutting.plan(plan).plan()));
        return shown(kits.kit(kitId), Entered.fresh(Map.of()), page);
    }

    static String shown(Kit.Whole whole, Entered entered, Model page) {
        page.addAttribute("whole", whole);
        page.addAttribute("kit", whole.kit());
        page.addAttribute("drawings", SettlementDrawing.of(whole.settlement().lines()));
        page.addAttribute("entered", entered);
        return "kit";
    }

    @GetMapping("/kits/{kitId}/settlement.{ending:csv|xlsx}")
    ResponseEntity<byte[]> settlement(@PathVariable String kitId, @PathVariable String ending) {
        return new Listing<Kit.Line>()
                .column("reel_or_batch", Kit.Line::id)
                .column("person_id", Kit.Line::personId)
                .column("unit", Kit.Line::unit)
                .column("handed_out", Kit.Line::handedOut)
                .column("fitted", Kit.Line::fitted)
                .column("returned", Kit.Line::returned)
                .column("scrapped", Kit.Line::scrapped)
                .column("missing", Kit.Line::missing)
                .column("missing_settled", Kit.Line::settled)
                .column("with_somebody_else", Kit.Line::elsewhere)
                .column("still_out", Kit.Line::stillOut)
                .file(
                        "settlement-" + kitId,
                        ending,
                        kits.kit(kitId).settlement().lines());
    }

    @GetMapping("/kits/{kitId}/pick-sheet.pdf")
    ResponseEntity<byte[]> pickSheet(@PathVariable String kitId, @ModelAttribute("desk") Desk desk) {
        Kit.Life kit = kits.kit(kitId).kit();
        byte[] pdf = kits.pickSheet(kitId, desk.metric() ? "SI" : "US", desk.person(kit.personId()));
        return Listing.saved("pick-sheet-" + kit.kitId() + ".pdf", MediaType.APPLICATION_PDF, pdf);
    }
}
