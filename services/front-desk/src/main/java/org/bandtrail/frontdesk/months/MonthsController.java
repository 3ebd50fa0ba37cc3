package org.bandtrail.frontdesk.months;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Months;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
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

/** Months of the books: which are closed, can this one close, and the way back. */
@Controller
class MonthsController {
    private final Finance finance;

    MonthsController(Finance finance) {
        this.finance = finance;
    }

    @GetMapping("/months")
    String months(Model page, @RequestParam @Nullable YearMonth after) {
        Months.Page months = finance.months(after);
        page.addAttribute("months", months);
        page.addAttribute("toClose", dueToClose(months));
        return "months";
    }

    @GetMapping("/months.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        List<Months.Month> all = new ArrayList<>();
        Months.Page page = finance.months(null);
        all.addAll(page.rows());
        while (page.next() != null) {
            page = finance.months(page.next());
            all.addAll(page.rows());
        }
        return new Listing<Months.Month>()
                .column("month", month -> month.month().toString())
                .column("state", Months.Month::state)
                .column("closed_at", Months.Month::closedAt)
                .column("closed_by", Months.Month::closedBy)
                .column("checks", Months.Month::checks)
                .column("signed", Months.Month::signed)
                .file("months", ending, all);
    }

    @GetMapping("/months/{month}")
    String month(@PathVariable YearMonth month, Model page) {
        return shown(month, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/months/{month}/sign")
    String sign(
            @PathVariable YearMonth month,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return told(month, page, next, sent, "/sign", form.body().text("check", "reason"), "The check is signed.");
    }

    @PostMapping("/months/{month}/close")
    String close(
            @PathVariable YearMonth month,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        String done = desk.days().month(month) + " is closed. What the field tells late goes to the next open month.";
        return told(month, page, next, sent, "/close", new Form(sent).body(), done);
    }

    @PostMapping("/months/{month}/reopening")
    String ask(
            @PathVariable YearMonth month,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form.Body body = new Form(sent).body().text("reason");
        return told(month, page, next, sent, "/reopening", body, "Asked. A second person can now reopen the month.");
    }

    @PostMapping("/months/{month}/reopen")
    String reopen(
            @PathVariable YearMonth month,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        String done = desk.days().month(month) + " is open again.";
        return told(month, page, next, sent, "/reopen", new Form(sent).body(), done);
    }

    @PostMapping("/months/{month}/reopening/drop")
    String drop(
            @PathVariable YearMonth month,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form.Body body = new Form(sent).body().text("reason");
        return told(month, page, next, sent, "/reopening/drop", body, "The month stays closed.");
    }

    private String told(
            YearMonth month,
            Model page,
            RedirectAttributes next,
            MultiValueMap<String, String> sent,
            String wish,
            Form.Body body,
            String done) {
        int before = finance.month(month).history().size();
        Optional<Entered> back =
                Entered.unlessDone(sent, () -> finance.tell().send("/periods/" + month + wish, body.done()));
        if (back.isPresent()) {
            return shown(month, page, back.get());
        }
        Soon.until(() -> finance.month(month).history().size() > before);
        next.addFlashAttribute("done", done);
        return "redirect:/months/" + month;
    }

    private String shown(YearMonth month, Model page, Entered entered) {
        Months.Whole whole = finance.month(month);
        page.addAttribute("month", month);
        page.addAttribute("whole", whole);
        page.addAttribute("checks", whole.checks().stream().map(CheckWords::of).toList());
        page.addAttribute("entered", entered);
        return "month";
    }

    /** The month to close next, if it has ended. */
    private Months.@Nullable Whole dueToClose(Months.Page months) {
        YearMonth next = months.toClose();
        return next == null || !next.isBefore(months.running()) ? null : finance.month(next);
    }
}
