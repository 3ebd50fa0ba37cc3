package org.bandtrail.frontdesk.plans;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.neighbours.field.WorkPlanning;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
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

/** The board of plans, and one plan with what may be done to it. */
@Controller
class PlansController {
    private final WorkPlanning planning;
    private final SupplyStock stock;
    private final TreeCare care;

    PlansController(WorkPlanning planning, SupplyStock stock, TreeCare care) {
        this.planning = planning;
        this.stock = stock;
        this.care = care;
    }

    @GetMapping("/plans")
    String board(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable LocalDate from) {
        LocalDate asked = from == null ? desk.days().today() : from;
        LocalDate first = asked.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        List<Plan.Row> plans = planning.plans(first, first.plusDays(Board.DAYS - 1L), false).stream()
                .filter(plan -> !plan.state().equals("called off"))
                .toList();
        page.addAttribute("board", Board.of(first, plans));
        page.addAttribute("plans", plans);
        page.addAttribute("trees", Board.trees(plans));
        page.addAttribute(
                "drafted",
                plans.stream().filter(plan -> plan.state().equals("drafted")).count());
        page.addAttribute("crews", crewNames());
        page.addAttribute("before", first.minusDays(Board.DAYS));
        page.addAttribute("after", first.plusDays(Board.DAYS));
        return "plans";
    }

    private Map<String, String> crewNames() {
        return stock.crews().stream().collect(Collectors.toMap(Stock.Crew::crewId, Stock.Crew::name, (a, b) -> a));
    }

    @GetMapping("/plans.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Plan.Row>()
                .column("plan_id", Plan.Row::planId)
                .column("state", Plan.Row::state)
                .column("day", Plan.Row::day)
                .column("last_day", Plan.Row::lastDay)
                .column("crew_id", Plan.Row::crewId)
                .column("depot_id", Plan.Row::depotId)
                .column("sites", plan -> String.join(" ", plan.sites()))
                .column("trees", Plan.Row::trees)
                .column("bands", Plan.Row::bands)
                .file("plans", ending, planning.allPlans());
    }

    @GetMapping("/plans/{planId}")
    String plan(@PathVariable String planId, Model page) {
        return shown(planning.plan(planId), Entered.fresh(Map.of()), page);
    }

    private String shown(Plan.Whole plan, Entered entered, Model page) {
        page.addAttribute("plan", plan);
        page.addAttribute("crew", crewNames().getOrDefault(plan.crewId(), plan.crewId()));
        page.addAttribute("pests", care.book().pestNames());
        page.addAttribute("entered", entered);
        return "plan";
    }

    @GetMapping("/plans/{planId}/walk.{ending:csv|xlsx}")
    ResponseEntity<byte[]> walk(@PathVariable String planId, @PathVariable String ending) {
        return new Listing<Plan.Line>()
                .column("step", Plan.Line::step)
                .column("tree_id", Plan.Line::treeId)
                .column("tag", Plan.Line::tag)
                .column("site_id", Plan.Line::siteId)
                .column("species", Plan.Line::species)
                .column("girth_mm", Plan.Line::girthMm)
                .column("bands", Plan.Line::bands)
                .column("tape_mm", Plan.Line::tapeMm)
                .column("mesh_mm", Plan.Line::meshMm)
                .column("fasteners", Plan.Line::fasteners)
                .file("walk-" + planId, ending, planning.plan(planId).walk());
    }

    @PostMapping("/plans/{planId}/{act:agree|done|call-off}")
    String act(
            @PathVariable String planId,
            @PathVariable String act,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Plan.Whole before = planning.plan(planId);
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> planning.tell()
                        .send(
                                "/work-plans/" + planId + "/" + act,
                                form.body().text("why").done()));
        if (back.isPresent()) {
            return shown(before, back.get(), page);
        }
        Soon.until(
                () -> planning.plan(planId).history().size() > before.history().size());
        next.addFlashAttribute("done", done(planId, act));
        return "redirect:/plans/" + planId;
    }

    private static String done(String planId, String act) {
        return switch (act) {
            case "agree" -> "Plan %s is agreed. The depot now counts what it needs.".formatted(planId);
            case "done" -> "Plan %s is done. It needs nothing any more.".formatted(planId);
            default -> "Plan %s is called off. It needs nothing any more.".formatted(planId);
        };
    }
}
