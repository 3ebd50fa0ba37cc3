package org.bandtrail.frontdesk.books;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.money.Ledger;
import org.bandtrail.frontdesk.neighbours.money.LedgerReading;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The books at any past moment, as known then and as known now. */
@Controller
class PastPages {
    private static final List<String> WAYS = List.of("item", "place", "account", "holding");
    private final LedgerReading ledger;

    PastPages(LedgerReading ledger) {
        this.ledger = ledger;
    }

    @GetMapping("/as-of")
    String past(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String knownAt,
            @RequestParam(defaultValue = "item") String by,
            @RequestParam(defaultValue = "") String after) {
        String moment = at.isEmpty() ? desk.days().nowEntered() : at;
        Ledger.Past past = ledger.past(asked(desk, moment, knownAt, by), after);
        page.addAttribute("past", past);
        page.addAttribute("slots", PlaceSums.WORDS);
        page.addAttribute("at", moment);
        page.addAttribute("knownAt", knownAt);
        page.addAttribute("ways", WAYS);
        page.addAttribute("later", past.rows().stream().anyMatch(Ledger.PastLine::toldLater));
        return "ledger-past";
    }

    @GetMapping("/as-of.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String knownAt,
            @RequestParam(defaultValue = "item") String by) {
        return new Listing<Ledger.PastLine>()
                .column(by, Ledger.PastLine::name)
                .column("material_code", Ledger.PastLine::materialCode)
                .column("kind", Ledger.PastLine::kind)
                .column("mm_or_pieces_known_then", Ledger.PastLine::quantityThen)
                .column("mm_or_pieces_known_now", Ledger.PastLine::quantityNow)
                .column("currency", Ledger.PastLine::currency)
                .column("minor_known_then", Ledger.PastLine::minorThen)
                .column("minor_known_now", Ledger.PastLine::minorNow)
                .file("as-of", ending, ledger.wholePast(asked(desk, at, knownAt, by)));
    }

    private static Map<String, Object> asked(Desk desk, String at, String knownAt, String by) {
        Map<String, Object> asked = new LinkedHashMap<>();
        asked.put("at", desk.days().entered(at));
        asked.put("by", by);
        if (!knownAt.isEmpty()) {
            asked.put("knownAt", desk.days().entered(knownAt));
        }
        return asked;
    }
}
