package org.bandtrail.frontdesk.spend;

import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Spending;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What stands behind the spend: the single charges, and the work done for it. */
@Controller
class SpendReasonsController {
    private static final List<String> NARROWING = List.of("account", "tree", "material", "person", "what");
    private final Finance finance;
    private final Names names;

    SpendReasonsController(Finance finance, Names names) {
        this.finance = finance;
        this.names = names;
    }

    @GetMapping("/spend/lines")
    String lines(Model page, @RequestParam Map<String, String> asked) {
        Map<String, @Nullable Object> question = new HashMap<>(narrowed(asked));
        question.put("after", asked.get("after"));
        Rows<Spending.Line> lines = finance.lines(question);
        page.addAttribute("lines", lines.rows());
        page.addAttribute("next", lines.next());
        page.addAttribute("asked", asked);
        page.addAttribute("stretch", stretch(asked));
        page.addAttribute("sites", names.sites());
        return "spend-lines";
    }

    @GetMapping("/spend/lines.{ending:csv|xlsx}")
    ResponseEntity<byte[]> lineFile(@PathVariable String ending, @RequestParam Map<String, String> asked) {
        return new Listing<Spending.Line>()
                .column("happened_at", Spending.Line::happenedAt)
                .column("recorded_at", Spending.Line::recordedAt)
                .column("month", Spending.Line::month)
                .column("what", Spending.Line::what)
                .column("account", Spending.Line::account)
                .column("holding", Spending.Line::holding)
                .column("id", Spending.Line::id)
                .column("material_code", Spending.Line::materialCode)
                .column("tree_id", Spending.Line::treeId)
                .column("person_id", Spending.Line::personId)
                .column("quantity_mm_or_pieces", Spending.Line::quantity)
                .column("minor", Spending.Line::minor)
                .column("currency", Spending.Line::currency)
                .file("charges", ending, finance.allLines(narrowed(asked)));
    }

    @GetMapping("/spend/work")
    String work(
            Model page,
            @RequestParam(defaultValue = "all") String from,
            @RequestParam(defaultValue = "") String through) {
        Stretch stretch = Stretch.asked(from, through, YearMonth.of(1, 1));
        page.addAttribute("work", finance.work(stretch.asked("site")));
        page.addAttribute("stretch", stretch);
        page.addAttribute("sites", names.sites());
        page.addAttribute("namesMissing", names.missing());
        return "spend-work";
    }

    @GetMapping("/spend/work.{ending:csv|xlsx}")
    ResponseEntity<byte[]> workFile(
            @PathVariable String ending,
            @RequestParam(defaultValue = "all") String from,
            @RequestParam(defaultValue = "") String through) {
        Stretch stretch = Stretch.asked(from, through, YearMonth.of(1, 1));
        return new Listing<Spending.Work>()
                .column("site_id", Spending.Work::siteId)
                .column("currency", Spending.Work::currency)
                .column("total_minor", Spending.Work::totalMinor)
                .column("trees", Spending.Work::trees)
                .column("bands", Spending.Work::bands)
                .column("band_days", Spending.Work::bandDays)
                .column("insects", Spending.Work::insects)
                .column("visits_with_a_lower_bound", Spending.Work::lowerBounds)
                .column("per_tree", Spending.Work::perTree)
                .column("per_band_day", Spending.Work::perBandDay)
                .column("per_1000_insects", Spending.Work::perThousandInsects)
                .file("cost-and-work", ending, finance.work(stretch.asked("site")));
    }

    private static Stretch stretch(Map<String, String> asked) {
        return Stretch.asked(asked.getOrDefault("from", "all"), asked.getOrDefault("through", ""), YearMonth.of(1, 1));
    }

    private static Map<String, String> narrowed(Map<String, String> asked) {
        Map<String, String> narrowed = new HashMap<>(stretch(asked).asked("site"));
        narrowed.remove("by");
        NARROWING.forEach(name -> {
            if (!asked.getOrDefault(name, "").isBlank()) {
                narrowed.put(name, asked.get(name));
            }
        });
        return narrowed;
    }
}
