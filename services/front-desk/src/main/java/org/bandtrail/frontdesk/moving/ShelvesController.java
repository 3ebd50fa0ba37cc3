package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
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

/** Bins and vehicles: what is where, marking a bin, putting a scanned label into one, loading and unloading. */
@Controller
class ShelvesController {
    private final DepotWork depotWork;
    private final SupplyStock stock;

    ShelvesController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/bins")
    String bins(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/bins.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Moved.Bin>()
                .column("depot_id", Moved.Bin::depotId)
                .column("bin", Moved.Bin::mark)
                .column("words", Moved.Bin::words)
                .column("reels", Moved.Bin::reels)
                .column("mm", Moved.Bin::mm)
                .column("pieces", Moved.Bin::pieces)
                .file("bins", ending, depotWork.bins());
    }

    @GetMapping("/bins/{depotId}/{mark}")
    String bin(@PathVariable String depotId, @PathVariable String mark, Model page) {
        page.addAttribute("bin", depotWork.bin(depotId, mark));
        page.addAttribute("mark", mark);
        return "bin";
    }

    @PostMapping("/bins")
    String mark(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/bins",
                                form.body().text("depotId", "mark", "words").done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        String bin = form.identity("depotId") + "/" + form.identity("mark");
        Soon.until(() -> depotWork.bins().stream().anyMatch(each -> each.binId().equals(bin)));
        next.addFlashAttribute("done", "Bin " + bin + " is marked.");
        return "redirect:/bins";
    }

    @PostMapping("/bins/put")
    String put(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String depot = "depot:" + form.text("depotId");
        List<String> moved = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Label label = Label.read(form, stock, place -> place.equals(depot) || place.startsWith(depot + "/"), desk);
            Moved.Put put = depotWork
                    .tell()
                    .post("/bins/put", label.into(form.body().text("depotId", "mark")), Moved.Put.class);
            moved.add(label.moved(put.quantity(), desk));
            TakeBack.offer(next, label, put.at(), "/bins");
        });
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        next.addFlashAttribute(
                "done",
                moved.getFirst() + ": " + (form.has("mark") ? "in " + form.identity("mark") : "out of the bins") + ".");
        next.addFlashAttribute("again", form.identity("depotId"));
        return "redirect:/bins";
    }

    @GetMapping("/vehicles")
    String vehicles(Model page) {
        return driven(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/vehicles.{ending:csv|xlsx}")
    ResponseEntity<byte[]> vehiclesFile(@PathVariable String ending) {
        return new Listing<Moved.Vehicle>()
                .column("vehicle_id", Moved.Vehicle::vehicleId)
                .column("name", Moved.Vehicle::name)
                .column("depot_id", Moved.Vehicle::depotId)
                .column("reels", Moved.Vehicle::reels)
                .column("length_mm", Moved.Vehicle::mm)
                .column("pieces", Moved.Vehicle::pieces)
                .file("vehicles", ending, depotWork.vehicles());
    }

    @PostMapping("/vehicles")
    String register(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/vehicles",
                                form.body().text("vehicleId", "name", "depotId").done()));
        if (back.isPresent()) {
            return driven(page, back.get());
        }
        String vehicle = form.identity("vehicleId");
        Soon.until(() ->
                depotWork.vehicles().stream().anyMatch(each -> each.vehicleId().equals(vehicle)));
        next.addFlashAttribute("done", form.text("name") + " is registered.");
        return "redirect:/vehicles";
    }

    @PostMapping("/vehicles/{what:load|unload}")
    String freight(
            @PathVariable String what,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String vehicle = form.identity("vehicleId");
        String from = what.equals("load") ? "depot:" + form.text("depotId") : "vehicle:" + vehicle;
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Scanned scanned = Scanned.read(form, stock, from, desk);
            Moved.Freight freight = depotWork
                    .tell()
                    .post(
                            "/vehicles/" + vehicle + "/" + what,
                            scanned.into(form.body().text("depotId")).done(),
                            Moved.Freight.class);
            TakeBack.offer(next, scanned.reels(), scanned.batchIds(), freight.at(), "/vehicles");
        });
        if (back.isPresent()) {
            return driven(page, back.get());
        }
        next.addFlashAttribute("done", what.equals("load") ? "Loaded." : "Unloaded.");
        return "redirect:/vehicles";
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("bins", depotWork.bins());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "bins";
    }

    private String driven(Model page, Entered entered) {
        List<Moved.Vehicle> vehicles = depotWork.vehicles();
        page.addAttribute("vehicles", vehicles);
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "vehicles";
    }
}
