package org.bandtrail.frontdesk.counts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Counted;
import org.bandtrail.frontdesk.neighbours.depot.Counting;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
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

/** The plan, the list of counts, and opening one. */
@Controller
class CountsController {
    private static final int PAGE = 50;
    private final Counting counting;
    private final SupplyStock stock;

    CountsController(Counting counting, SupplyStock stock) {
        this.counting = counting;
        this.stock = stock;
    }

    @GetMapping("/counts")
    String counts(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<Counted.Count> counts = counting.counts(Map.of("after", after, "limit", PAGE));
        Rows<Counted.Due> plan = counting.plan(Map.of("limit", PAGE));
        List<Counted.Count> open = counts.rows().stream()
                .filter(count -> count.counting() || count.stage().equals("REVIEW"))
                .toList();
        page.addAttribute("open", open);
        page.addAttribute(
                "closed",
                counts.rows().stream().filter(count -> !open.contains(count)).toList());
        page.addAttribute("next", counts.next());
        List<Counted.Due> due = plan.rows().stream().filter(Counted.Due::due).toList();
        page.addAttribute("due", due);
        page.addAttribute(
                "places", due.stream().map(Counted.Due::place).distinct().count());
        page.addAttribute(
                "later", plan.rows().stream().filter(row -> !row.due()).toList());
        page.addAttribute("more", plan.next() != null);
        page.addAttribute("rules", counting.rules());
        return "counts";
    }

    @GetMapping("/counts.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Counted.Count>()
                .column("count_id", Counted.Count::countId)
                .column("place", Counted.Count::place)
                .column("stage", Counted.Count::stage)
                .column("lines", Counted.Count::lines)
                .column("differing", Counted.Count::differing)
                .column("opened_by", Counted.Count::openedBy)
                .column("opened_at", Counted.Count::openedAt)
                .column("closed_by", Counted.Count::closedBy)
                .column("closed_at", Counted.Count::closedAt)
                .file("counts", ending, counting.allCounts());
    }

    @GetMapping("/counts/plan.{ending:csv|xlsx}")
    ResponseEntity<byte[]> plan(@PathVariable String ending) {
        return new Listing<Counted.Due>()
                .column("place", Counted.Due::place)
                .column("material_code", Counted.Due::materialCode)
                .column("reels_or_batches", Counted.Due::holdings)
                .column("value_class", Counted.Due::valueClass)
                .column("every_days", Counted.Due::everyDays)
                .column("last_counted_at", Counted.Due::lastCountedAt)
                .column("due_on", Counted.Due::dueOn)
                .column("due", Counted.Due::due)
                .file("count-plan", ending, counting.wholePlan());
    }

    @GetMapping("/counts/{countId}/lines.{ending:csv|xlsx}")
    ResponseEntity<byte[]> lines(@PathVariable String countId, @PathVariable String ending) {
        return new Listing<Counted.Line>()
                .column("reel_or_batch", Counted.Line::id)
                .column("place", Counted.Line::place)
                .column("material_code", Counted.Line::materialCode)
                .column("unit", Counted.Line::unit)
                .column("on_sheet", Counted.Line::onSheet)
                .column("book", Counted.Line::book)
                .column("counted", Counted.Line::counted)
                .column("difference", Counted.Line::difference)
                .column(
                        "worth_minor",
                        line -> line.value() == null ? null : line.value().minor())
                .column(
                        "currency",
                        line -> line.value() == null ? null : line.value().currency())
                .column("counted_by", line -> String.join(" ", line.countedBy()))
                .column("reason", Counted.Line::reason)
                .file("count-" + countId, ending, counting.count(countId).lines());
    }

    @GetMapping("/counts/new")
    String form(Model page, @RequestParam(defaultValue = "") String place) {
        String depotAndBin = place.startsWith("depot:") ? place.substring("depot:".length()) : "";
        int slash = depotAndBin.indexOf('/');
        return shown(
                page,
                Entered.fresh(Map.of(
                        "depotId",
                        slash < 0 ? depotAndBin : depotAndBin.substring(0, slash),
                        "bin",
                        slash < 0 ? "" : depotAndBin.substring(slash + 1))));
    }

    @PostMapping("/counts")
    String open(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String countId = form.has("countId") ? form.identity("countId") : desk.freshId("C");
        String place = "depot:" + form.identity("depotId") + (form.has("bin") ? "/" + form.identity("bin") : "");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts",
                                form.body()
                                        .put("countId", countId)
                                        .put("place", place)
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.readable(() -> counting.count(countId));
        next.addFlashAttribute("done", "The sheet is frozen as of now. Count what lies there.");
        return "redirect:/counts/" + countId;
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "count-new";
    }
}
