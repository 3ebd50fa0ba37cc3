package org.bandtrail.frontdesk.discrepancies;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Counted;
import org.bandtrail.frontdesk.neighbours.depot.Counting;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.bandtrail.kernel.Money;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What does not add up, and the ways to end each question. */
@Controller
class DiscrepanciesController {
    private static final int PAGE = 50;
    private final Counting counting;
    private final SupplyStock stock;

    DiscrepanciesController(Counting counting, SupplyStock stock) {
        this.counting = counting;
        this.stock = stock;
    }

    @GetMapping("/discrepancies")
    String list(
            Model page,
            @RequestParam(defaultValue = "") String waiting,
            @RequestParam(defaultValue = "") String after) {
        return shown(page, Entered.fresh(Map.of("waiting", waiting, "after", after)));
    }

    @GetMapping("/discrepancies.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Counted.Question>()
                .column("what", Counted.Question::what)
                .column("material", Counted.Question::material)
                .column("reel_or_batch", Counted.Question::id)
                .column("place", Counted.Question::place)
                .column("person_id", Counted.Question::personId)
                .column("last_holder", Counted.Question::lastHolder)
                .column("quantity", Counted.Question::quantity)
                .column("unit", Counted.Question::unit)
                .column(
                        "worth_minor",
                        row -> row.worth() == null ? null : row.worth().minor())
                .column(
                        "currency",
                        row -> row.worth() == null ? null : row.worth().currency())
                .column("since", Counted.Question::since)
                .column("age_days", Counted.Question::ageDays)
                .column(
                        "likely_causes",
                        row -> row.causes().stream().map(Counted.Likely::words).collect(Collectors.joining("; ")))
                .column("waits_until", Counted.Question::waitsUntil)
                .file("does-not-add-up", ending, counting.allQuestions());
    }

    @PostMapping("/discrepancies/settle")
    String settle(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                sent,
                page,
                next,
                "/discrepancies/settle",
                form.body().text("material", "id", "place", "reason").done(),
                before -> false,
                "Settled: %s, with your reason beside it.");
    }

    @PostMapping("/discrepancies/put-right")
    String putRight(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Form.Body body =
                form.body().text("material", "id", "place", "other", "reason").put("through", through(form));
        Optional<Entered> unreadable =
                Entered.unlessDone(sent, () -> body.length("measured").whole("counted"));
        if (unreadable.isPresent()) {
            return shown(page, unreadable.get());
        }
        String quantity = form.text("quantity");
        return done(
                sent,
                page,
                next,
                "/discrepancies/put-right",
                body.done(),
                row -> Long.toString(row.quantity()).equals(quantity),
                "Put right: %s. Every correcting move stands in its history.");
    }

    /** A depot chosen from the list, or a place as the cause names it. */
    private static String through(Form form) {
        return form.has("depotId") ? "depot:" + form.identity("depotId") : form.text("through");
    }

    @PostMapping("/discrepancies/wait")
    String letWait(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                sent,
                page,
                next,
                "/discrepancies/wait",
                form.body().text("material", "id", "place", "until", "reason").done(),
                row -> row.waitsUntil() == null,
                "%s waits, and comes back on that day.");
    }

    /** Sends a wish, and waits until the question is seen to have changed. */
    private String done(
            MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            String path,
            Map<String, Object> body,
            Predicate<Counted.Question> stillAsItWas,
            String done) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> counting.tell().send(path, body));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        boolean ends = path.endsWith("settle");
        Soon.until(() -> counting.allQuestions().stream()
                .filter(row -> row.id().equals(form.text("id")) && row.place().equals(form.text("place")))
                .noneMatch(row -> ends || stillAsItWas.test(row)));
        next.addFlashAttribute("done", done.formatted(form.text("id")));
        return "redirect:/discrepancies";
    }

    private String shown(Model page, Entered entered) {
        boolean waiting = entered.value("waiting").equals("yes");
        Rows<Counted.Question> questions =
                counting.questions(Map.of("waiting", waiting, "after", entered.value("after"), "limit", PAGE));
        List<Counted.Question> rows = questions.rows();
        Map<String, Long> worth = rows.stream()
                .map(Counted.Question::worth)
                .filter(java.util.Objects::nonNull)
                .collect(Collectors.groupingBy(Money::currency, TreeMap::new, Collectors.summingLong(Money::minor)));
        page.addAttribute("questions", rows);
        page.addAttribute("next", questions.next());
        page.addAttribute(
                "worth",
                worth.entrySet().stream()
                        .map(sum -> Money.of(sum.getValue(), sum.getKey()))
                        .toList());
        page.addAttribute(
                "oldest",
                rows.stream().mapToLong(Counted.Question::ageDays).max().orElse(0));
        page.addAttribute("waiting", waiting);
        page.addAttribute("depots", rows.isEmpty() ? List.of() : stock.depots());
        page.addAttribute("entered", entered);
        return "discrepancies";
    }
}
