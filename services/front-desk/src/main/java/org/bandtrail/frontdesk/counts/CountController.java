package org.bandtrail.frontdesk.counts;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Counted;
import org.bandtrail.frontdesk.neighbours.depot.Counting;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One count: figures are entered blind, then differences are looked at and approved. */
@Controller
class CountController {
    private final Counting counting;

    CountController(Counting counting) {
        this.counting = counting;
    }

    @GetMapping("/counts/{countId}")
    String count(
            @PathVariable String countId,
            Model page,
            @RequestParam(defaultValue = "") String bin,
            @RequestParam(defaultValue = "") String alone) {
        return shown(page, countId, Entered.fresh(Map.of("bin", bin, "alone", alone)));
    }

    @PostMapping("/counts/{countId}/lines")
    String enter(
            @PathVariable String countId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> enter(countId, form));
        if (back.isPresent()) {
            return shown(page, countId, back.get());
        }
        String id = form.identity("id");
        Soon.until(() -> counting.count(countId).lines().stream()
                .anyMatch(line -> line.id().equals(id) && line.counted() != null));
        next.addFlashAttribute("done", id + " is entered. Scan the next one.");
        next.addAttribute("bin", form.text("bin"));
        next.addAttribute("alone", form.text("alone"));
        return "redirect:/counts/" + countId;
    }

    private void enter(String countId, Form form) {
        if (form.has("measured") == form.has("counted")) {
            throw new UnfitForm("Enter what you measured of %s, or the pieces you counted.".formatted(form.text("id")));
        }
        String scope = counting.count(countId).count().place();
        Form.Body body = form.body()
                .text("id")
                .length("measured")
                .whole("counted")
                .put("alone", form.text("alone").equals("yes"));
        if (form.has("bin") && !scope.contains("/")) {
            body.put("place", scope + "/" + form.identity("bin"));
        }
        counting.tell().send("/counts/" + countId + "/lines", body.done());
    }

    @PostMapping("/counts/{countId}/finish")
    String finish(
            @PathVariable String countId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        int round = counting.count(countId).count().round();
        boolean rest = form.text("restNotThere").equals("yes");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts/" + countId + "/finish",
                                form.body().put("restNotThere", rest).done()));
        return back.map(entered -> shown(page, countId, entered))
                .orElseGet(() -> onward(
                        countId, next, count -> !count.counting() || count.round() > round, "This round is finished."));
    }

    @PostMapping("/counts/{countId}/reasons")
    String explain(
            @PathVariable String countId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts/" + countId + "/reasons",
                                form.body()
                                        .text("holding", "id", "place", "reason")
                                        .done()));
        if (back.isPresent()) {
            return shown(page, countId, back.get());
        }
        Soon.until(() -> counting.count(countId).lines().stream()
                .anyMatch(line -> line.id().equals(form.text("id"))
                        && line.place().equals(form.text("place"))
                        && Objects.equals(line.reason(), form.text("reason"))));
        next.addFlashAttribute("done", "The reason of " + form.text("id") + " stands beside it.");
        return "redirect:/counts/" + countId;
    }

    @PostMapping("/counts/{countId}/approve")
    String approve(
            @PathVariable String countId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts/" + countId + "/approve",
                                new Form(sent).body().done()));
        return back.map(entered -> shown(page, countId, entered))
                .orElseGet(() -> onward(
                        countId,
                        next,
                        count -> count.stage().equals("APPROVED"),
                        "Approved. The books now have what was counted."));
    }

    @PostMapping("/counts/{countId}/cancel")
    String cancel(
            @PathVariable String countId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> counting.tell()
                        .send(
                                "/counts/" + countId + "/cancel",
                                new Form(sent).body().text("reason").done()));
        return back.map(entered -> shown(page, countId, entered))
                .orElseGet(() -> onward(
                        countId,
                        next,
                        count -> count.stage().equals("CANCELLED"),
                        "Cancelled. Nothing was changed in the books."));
    }

    private String onward(String countId, RedirectAttributes next, Predicate<Counted.Count> seen, String done) {
        Soon.until(() -> seen.test(counting.count(countId).count()));
        next.addFlashAttribute("done", done);
        return "redirect:/counts/" + countId;
    }

    private String shown(Model page, String countId, Entered entered) {
        Counted.Whole whole = counting.count(countId);
        List<Counted.Line> waiting = whole.lines().stream()
                .filter(line -> line.counted() == null && (whole.count().round() == 1 || line.toRecount()))
                .toList();
        page.addAttribute("whole", whole);
        page.addAttribute("count", whole.count());
        page.addAttribute("waiting", waiting);
        page.addAttribute(
                "counted",
                whole.lines().stream().filter(line -> line.counted() != null).toList());
        page.addAttribute(
                "differing",
                whole.lines().stream().filter(Counted.Line::differs).toList());
        page.addAttribute(
                "silent",
                whole.lines().stream()
                        .filter(line -> line.differs() && line.reason() == null)
                        .count());
        page.addAttribute("entered", entered);
        return whole.count().counting() ? "count-enter" : "count";
    }
}
