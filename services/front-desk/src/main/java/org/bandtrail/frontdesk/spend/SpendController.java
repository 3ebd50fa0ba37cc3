package org.bandtrail.frontdesk.spend;

import java.time.YearMonth;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Months;
import org.bandtrail.frontdesk.neighbours.money.Spending;
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

/**
 * Spend along every way of adding up, and the front door of finance: what was spent, what waits, can the month
 * close.
 */
@Controller
class SpendController {
    private final Finance finance;
    private final Names names;

    SpendController(Finance finance, Names names) {
        this.finance = finance;
        this.names = names;
    }

    @GetMapping("/spend")
    String spend(
            Model page,
            @RequestParam(defaultValue = "site") String by,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String through,
            @RequestParam(defaultValue = "") String after,
            @ModelAttribute("desk") Desk desk) {
        Months.Page months = finance.months(null);
        Stretch stretch = Stretch.asked(from, through, months.running());
        Spending.Page spend = spend(stretch, by, after);
        if (spend.rows().isEmpty() && (from + through).isBlank()) {
            Stretch newest = newestWithSpend(stretch);
            if (!newest.equals(stretch)) {
                page.addAttribute("empty", stretch);
                stretch = newest;
                spend = spend(stretch, by, after);
            }
        }
        show(page, spend, by, stretch, desk);
        page.addAttribute("months", months);
        page.addAttribute("toClose", closing(months));
        return "spend";
    }

    private Spending.Page spend(Stretch stretch, String by, String after) {
        Map<String, @Nullable Object> asked = new HashMap<>(stretch.asked(by));
        asked.put("after", after);
        return finance.spend(asked);
    }

    /** The newest month in which anything was spent; the months asked for if there never was one. */
    private Stretch newestWithSpend(Stretch asked) {
        return finance.allSpend(Map.of("by", "month")).stream()
                .map(Spending.Row::month)
                .filter(Objects::nonNull)
                .map(YearMonth::parse)
                .max(Comparator.naturalOrder())
                .map(month -> new Stretch(month, month))
                .orElse(asked);
    }

    private void show(Model page, Spending.Page spend, String by, Stretch stretch, Desk desk) {
        List<Row> rows = spend.rows().stream()
                .map(row -> Row.of(row, by, stretch, names.of(by), desk))
                .sorted(
                        by.equals("month")
                                ? Comparator.comparing(Row::name)
                                : Comparator.comparingLong(
                                                (Row row) -> row.row().totalMinor())
                                        .reversed())
                .toList();
        page.addAttribute("spend", spend);
        page.addAttribute("rows", rows);
        page.addAttribute("by", by);
        page.addAttribute("ways", Row.WAYS);
        page.addAttribute("stretch", stretch);
        page.addAttribute("namesMissing", names.missing());
        page.addAttribute(
                "most",
                Math.max(
                        1,
                        rows.stream()
                                .mapToLong(row -> Math.abs(row.row().totalMinor()))
                                .max()
                                .orElse(1)));
    }

    /** The month to close next, or, when all that ended are closed, the running one: its checks say what waits. */
    private Months.@Nullable Whole closing(Months.Page months) {
        YearMonth next = months.toClose();
        return next == null ? null : finance.month(next.isAfter(months.running()) ? months.running() : next);
    }

    @GetMapping("/spend.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @RequestParam(defaultValue = "site") String by,
            @RequestParam(defaultValue = "all") String from,
            @RequestParam(defaultValue = "") String through) {
        Stretch stretch = Stretch.asked(from, through, YearMonth.of(1, 1));
        return new Listing<Spending.Row>()
                .column("site_id", Spending.Row::siteId)
                .column("tree_id", Spending.Row::treeId)
                .column("material_code", Spending.Row::materialCode)
                .column("crew_id", Spending.Row::crewId)
                .column("person_id", Spending.Row::personId)
                .column("grant_id", Spending.Row::grantId)
                .column("month", Spending.Row::month)
                .column("currency", Spending.Row::currency)
                .column("tape_minor", Spending.Row::tapeMinor)
                .column("mesh_minor", Spending.Row::meshMinor)
                .column("fastener_minor", Spending.Row::fastenerMinor)
                .column("total_minor", Spending.Row::totalMinor)
                .column("used_minor", Spending.Row::usedMinor)
                .column("scrapped_minor", Spending.Row::scrappedMinor)
                .column("missing_minor", Spending.Row::missingMinor)
                .column("written_down_minor", Spending.Row::writtenDownMinor)
                .column("tape_mm", Spending.Row::tapeMm)
                .column("mesh_mm", Spending.Row::meshMm)
                .column("pieces", Spending.Row::pieces)
                .file("spend-by-" + by, ending, finance.allSpend(stretch.asked(by)));
    }
}
