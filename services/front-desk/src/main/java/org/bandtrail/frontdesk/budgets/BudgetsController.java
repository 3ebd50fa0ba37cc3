package org.bandtrail.frontdesk.budgets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.money.Budgeting;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Funding;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Budgets: the list with its bars, one budget, setting, changing and dropping one. */
@Controller
class BudgetsController {
    private static final Logger LOG = LoggerFactory.getLogger(BudgetsController.class);
    private final Finance finance;
    private final SiteInstalls installs;

    BudgetsController(Finance finance, SiteInstalls installs) {
        this.finance = finance;
        this.installs = installs;
    }

    @GetMapping("/budgets")
    String budgets(Model page) {
        List<Budgeting.Standing> all = finance.budgets();
        page.addAttribute(
                "budgets",
                all.stream()
                        .filter(standing -> standing.budget().dropped() == null)
                        .toList());
        page.addAttribute(
                "over",
                all.stream()
                        .filter(s -> s.budget().dropped() == null && s.leftMinor() < 0)
                        .count());
        named(page);
        return "budgets";
    }

    @GetMapping("/budgets.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Budgeting.Standing>()
                .column("budget_id", standing -> standing.budget().budgetId())
                .column("name", standing -> standing.budget().name())
                .column("grant_id", standing -> standing.budget().grantId())
                .column("site_id", standing -> standing.budget().siteId())
                .column("kind", standing -> standing.budget().kind())
                .column("from", standing -> standing.budget().from().toString())
                .column("through", standing -> standing.budget().through().toString())
                .column("currency", standing -> standing.budget().amount().currency())
                .column("amount_minor", standing -> standing.budget().amount().minor())
                .column("counts", standing -> standing.budget().counts())
                .column("used_minor", Budgeting.Standing::usedMinor)
                .column("scrapped_minor", Budgeting.Standing::scrappedMinor)
                .column("missing_minor", Budgeting.Standing::missingMinor)
                .column("written_down_minor", Budgeting.Standing::writtenDownMinor)
                .column("actual_minor", Budgeting.Standing::actualMinor)
                .column("committed_minor", Budgeting.Standing::committedMinor)
                .column("left_minor", Budgeting.Standing::leftMinor)
                .column("dropped", standing -> standing.budget().dropped())
                .file("budgets", ending, finance.budgets());
    }

    @GetMapping("/budgets/new")
    String fresh(Model page) {
        return form(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/budgets")
    String set(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/budgets",
                                form.body()
                                        .text(
                                                "budgetId",
                                                "name",
                                                "grantId",
                                                "siteId",
                                                "kind",
                                                "from",
                                                "through",
                                                "counts")
                                        .money("amount")
                                        .done()));
        if (back.isPresent()) {
            return form(page, back.get());
        }
        String budgetId = form.identity("budgetId");
        Soon.readable(() -> finance.budget(budgetId));
        next.addFlashAttribute("done", "Budget " + budgetId + " is set.");
        return "redirect:/budgets";
    }

    @GetMapping("/budgets/{budgetId}")
    String budget(@PathVariable String budgetId, Model page) {
        return shown(page, finance.budget(budgetId), Entered.fresh(Map.of()));
    }

    @PostMapping("/budgets/{budgetId}/amount")
    String change(
            @PathVariable String budgetId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Function<Form, Form.Body> amount = form -> form.body().money("amount").text("reason");
        return told(budgetId, "/amount", sent, page, next, "The amount is changed.", amount);
    }

    @PostMapping("/budgets/{budgetId}/drop")
    String drop(
            @PathVariable String budgetId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Function<Form, Form.Body> reason = form -> form.body().text("reason");
        return told(budgetId, "/drop", sent, page, next, "The budget counts no longer.", reason);
    }

    private String told(
            String budgetId,
            String wish,
            MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            String done,
            Function<Form, Form.Body> body) {
        Budgeting.Whole before = finance.budget(budgetId);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/budgets/" + budgetId + wish,
                                body.apply(new Form(sent)).done()));
        if (back.isPresent()) {
            return shown(page, before, back.get());
        }
        Soon.until(() ->
                finance.budget(budgetId).history().size() > before.history().size());
        next.addFlashAttribute("done", done);
        return "redirect:/budgets/" + budgetId;
    }

    private String form(Model page, Entered entered) {
        named(page);
        page.addAttribute("entered", entered);
        return "budget-new";
    }

    private String shown(Model page, Budgeting.Whole whole, Entered entered) {
        named(page);
        page.addAttribute("whole", whole);
        page.addAttribute("s", whole.standing());
        page.addAttribute("entered", entered);
        return "budget";
    }

    private void named(Model page) {
        page.addAttribute(
                "grants",
                finance.grants().stream().collect(Collectors.toMap(Funding.Grant::grantId, Funding.Grant::name)));
        Map<String, String> sites = new HashMap<>();
        try {
            installs.sites().forEach((Installs.Site site) -> sites.put(site.siteId(), site.name()));
        } catch (NeighbourSilent silent) {
            LOG.warn("Budgets are shown without the names of sites: {}", silent.getMessage());
        }
        page.addAttribute("sites", sites);
    }
}
