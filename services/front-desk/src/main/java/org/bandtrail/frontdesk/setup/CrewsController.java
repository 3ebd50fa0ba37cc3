package org.bandtrail.frontdesk.setup;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.bandtrail.frontdesk.people.People;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Crews, who is in them, and vehicles. */
@Controller
class CrewsController {
    private final SupplyStock stock;
    private final DepotWork depotWork;
    private final People people;

    CrewsController(SupplyStock stock, DepotWork depotWork, People people) {
        this.stock = stock;
        this.depotWork = depotWork;
        this.people = people;
    }

    @GetMapping("/set-up/crews")
    String crews(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/set-up/crews.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Crew>()
                .column("crew_id", Stock.Crew::crewId)
                .column("name", Stock.Crew::name)
                .column("depot_id", Stock.Crew::depotId)
                .column("people", crew -> String.join(" ", of(crew)))
                .file("crews", ending, stock.crews());
    }

    @PostMapping("/set-up/crews")
    String form(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String crewId = form.identity("crewId");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/crews",
                                form.body()
                                        .put("crewId", crewId)
                                        .text("name", "depotId")
                                        .put("people", members(form))
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> stock.crews().stream().anyMatch(crew -> crew.crewId().equals(crewId)));
        next.addFlashAttribute("done", "Crew " + form.text("name") + " is formed.");
        return "redirect:/set-up/crews";
    }

    @PostMapping("/set-up/crews/{crewId}/people")
    String change(
            @PathVariable String crewId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .put(
                                "/crews/" + crewId + "/people",
                                form.body().put("people", members(form)).done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> stock.crews().stream()
                .anyMatch(crew -> crew.crewId().equals(crewId)
                        && new TreeSet<>(of(crew)).equals(new TreeSet<>(form.filled("person")))));
        next.addFlashAttribute("done", "Changed. What they carry stays in the care of the person who signed for it.");
        return "redirect:/set-up/crews";
    }

    @PostMapping("/set-up/vehicles")
    String vehicle(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        String vehicleId = form.identity("vehicleId");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/vehicles",
                                form.body()
                                        .put("vehicleId", vehicleId)
                                        .put("name", form.text("vehicleName"))
                                        .put("depotId", form.text("vehicleDepotId"))
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> depotWork.vehicles().stream()
                .anyMatch(vehicle -> vehicle.vehicleId().equals(vehicleId)));
        next.addFlashAttribute("done", form.text("vehicleName") + " can be loaded now.");
        return "redirect:/set-up/crews";
    }

    private static List<String> members(Form form) {
        List<String> members = form.filled("person");
        if (members.isEmpty()) {
            throw new UnfitForm("Nobody is ticked. A crew is at least one person.");
        }
        return members;
    }

    private static List<String> of(Stock.Crew crew) {
        List<String> members = crew.people();
        return members == null ? List.of() : members;
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("crews", stock.crews());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("vehicles", depotWork.vehicles());
        page.addAttribute(
                "people",
                people.all().stream().filter(person -> !person.erased()).toList());
        page.addAttribute("entered", entered);
        return "set-up-crews";
    }
}
