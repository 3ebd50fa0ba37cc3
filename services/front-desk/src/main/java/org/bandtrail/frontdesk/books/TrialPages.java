package org.bandtrail.frontdesk.books;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.money.Ledger;
import org.bandtrail.frontdesk.neighbours.money.LedgerReading;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The trial of a month, and the lines behind each of its figures. */
@Controller
class TrialPages {
    private static final List<String> NARROWED = List.of("period", "item", "place", "account", "holding", "id");
    private final LedgerReading ledger;

    TrialPages(LedgerReading ledger) {
        this.ledger = ledger;
    }

    @GetMapping("/trial")
    String trial(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam @Nullable YearMonth month,
            @RequestParam @Nullable String after) {
        YearMonth shown = month == null ? YearMonth.from(desk.days().today()) : month;
        Ledger.Trial trial = ledger.trial(shown, after);
        page.addAttribute("slots", PlaceSums.WORDS);
        page.addAttribute("month", shown);
        page.addAttribute("trial", trial);
        page.addAttribute(
                "leaks",
                trial.law().stream().filter(law -> law.differenceMinor() != 0).toList());
        return "ledger-trial";
    }

    @GetMapping("/trial.{ending:csv|xlsx}")
    ResponseEntity<byte[]> trialFile(@PathVariable String ending, @RequestParam YearMonth month) {
        return new Listing<Ledger.TrialLine>()
                .column("month", row -> month.toString())
                .column("material_code", Ledger.TrialLine::materialCode)
                .column("kind", Ledger.TrialLine::kind)
                .column("place", Ledger.TrialLine::place)
                .column("opening_mm_or_pieces", Ledger.TrialLine::opening)
                .column("in_mm_or_pieces", Ledger.TrialLine::in)
                .column("out_mm_or_pieces", Ledger.TrialLine::out)
                .column("adjusted_mm_or_pieces", Ledger.TrialLine::adjusted)
                .column("closing_mm_or_pieces", Ledger.TrialLine::closing)
                .column("currency", Ledger.TrialLine::currency)
                .column("opening_minor", Ledger.TrialLine::openingMinor)
                .column("in_minor", Ledger.TrialLine::inMinor)
                .column("out_minor", Ledger.TrialLine::outMinor)
                .column("adjusted_minor", Ledger.TrialLine::adjustedMinor)
                .column("closing_minor", Ledger.TrialLine::closingMinor)
                .file("trial-" + month, ending, ledger.wholeTrial(month));
    }

    @GetMapping("/ledger")
    String lines(Model page, @RequestParam Map<String, String> sent) {
        Map<String, String> asked = narrowed(sent);
        Rows<Ledger.Entry> lines = ledger.lines(asked, sent.get("after"));
        page.addAttribute("slots", PlaceSums.WORDS);
        page.addAttribute("asked", asked);
        page.addAttribute("lines", lines.rows());
        page.addAttribute("next", lines.next());
        return "ledger-lines";
    }

    @GetMapping("/ledger.{ending:csv|xlsx}")
    ResponseEntity<byte[]> linesFile(@PathVariable String ending, @RequestParam Map<String, String> sent) {
        return new Listing<Ledger.Entry>()
                .column("line", Ledger.Entry::line)
                .column("month", Ledger.Entry::period)
                .column("happened_at", Ledger.Entry::happenedAt)
                .column("recorded_at", Ledger.Entry::recordedAt)
                .column("what", Ledger.Entry::what)
                .column("note", Ledger.Entry::note)
                .column("holding", Ledger.Entry::holding)
                .column("id", Ledger.Entry::id)
                .column("material_code", Ledger.Entry::materialCode)
                .column("source", Ledger.Entry::source)
                .column("target", Ledger.Entry::target)
                .column("mm_or_pieces", Ledger.Entry::quantity)
                .column("currency", Ledger.Entry::currency)
                .column("out_minor", Ledger.Entry::outMinor)
                .column("in_minor", Ledger.Entry::inMinor)
                .column("account", Ledger.Entry::account)
                .column("account_mm_or_pieces", Ledger.Entry::accountQuantity)
                .column("account_minor", Ledger.Entry::accountMinor)
                .column("site_id", Ledger.Entry::siteId)
                .column("tree_id", Ledger.Entry::treeId)
                .column("person_id", Ledger.Entry::personId)
                .file("ledger", ending, ledger.allLines(narrowed(sent)));
    }

    private static Map<String, String> narrowed(Map<String, String> sent) {
        Map<String, String> asked = new LinkedHashMap<>();
        NARROWED.forEach(field -> {
            String value = sent.getOrDefault(field, "").strip();
            if (!value.isEmpty()) {
                asked.put(field, value);
            }
        });
        return asked;
    }
}
