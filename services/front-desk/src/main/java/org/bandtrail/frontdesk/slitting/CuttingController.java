package org.bandtrail.frontdesk.slitting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.bandtrail.kernel.LengthText;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Planning a slitting with a drawing to scale, then doing it. */
@Controller
class CuttingController {
    private final DepotWork depotWork;
    private final SupplyStock stock;

    CuttingController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/slittings/new")
    String plan(@RequestParam MultiValueMap<String, String> asked, Model page) {
        Form form = new Form(asked);
        Optional<Entered> unreadable = Entered.unlessDone(asked, () -> {
            if (form.has("reelId")) {
                page.addAttribute("plan", planned(form));
            }
        });
        return shown(page, unreadable.orElseGet(() -> new Entered(asked, null)));
    }

    @PostMapping("/slittings")
    String slit(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String slittingId = form.identity("slittingId");
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/slittings",
                                form.body()
                                        .put("slittingId", slittingId)
                                        .put("reelId", form.identity("reelId"))
                                        .text("depotId")
                                        .length("length")
                                        .put("trim", form.text("trimMm") + " mm")
                                        .put("strips", strips(form))
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            Entered.unlessDone(sent, () -> page.addAttribute("plan", planned(form)));
            return shown(page, back.get());
        }
        Soon.readable(() -> depotWork.slitting(slittingId));
        next.addFlashAttribute(
                "done", "Slit. Each strip is a reel of its own now; print the labels before they are mixed up.");
        return "redirect:/slittings/" + slittingId;
    }

    private static List<Map<String, String>> strips(Form form) {
        return form.lines("label", "stripItem").values().stream()
                .map(parts -> Map.of(
                        "reelId", parts.getOrDefault("label", ""), "materialCode", parts.getOrDefault("stripItem", "")))
                .toList();
    }

    private CutPlan planned(Form form) {
        Stock.Reel reel = stock.reel(form.identity("reelId")).balance();
        Map<String, Stock.Item> items = items();
        Stock.Item wide = items.get(String.valueOf(reel.materialCode()));
        if (wide == null || wide.widthMm() == null) {
            throw new UnfitForm(
                    "The books do not know how wide reel %s is. Register its item with a width under Set up."
                            .formatted(reel.reelId()));
        }
        List<CutPlan.Wanted> wanted = new ArrayList<>();
        form.lines("item", "strips").values().forEach(parts -> {
            Stock.Item narrow = items.get(parts.getOrDefault("item", ""));
            String count = parts.getOrDefault("strips", "");
            if (narrow != null && !count.isEmpty()) {
                wanted.add(new CutPlan.Wanted(narrow, atMostSixty(Form.whole("strips", count))));
            }
        });
        return CutPlan.of(reel, wide, length(form, reel), wanted, depotWork::labels);
    }

    private static int atMostSixty(long strips) {
        if (strips < 0 || strips > 60) {
            throw new UnfitForm("[%d] strips cannot be cut at once. Enter 1 to 60.".formatted(strips));
        }
        return (int) strips;
    }

    private static long length(Form form, Stock.Reel reel) {
        if (!form.has("length")) {
            return reel.inDepotMm();
        }
        try {
            return LengthText.parse(form.length("length")).mm();
        } catch (IllegalArgumentException unreadable) {
            throw new UnfitForm(String.valueOf(unreadable.getMessage()));
        }
    }

    private Map<String, Stock.Item> items() {
        return stock.items().stream()
                .collect(Collectors.toMap(
                        Stock.Item::materialCode, item -> item, (one, other) -> one, LinkedHashMap::new));
    }

    private String shown(Model page, Entered entered) {
        Object plan = page.getAttribute("plan");
        page.addAttribute("depots", stock.depots());
        page.addAttribute(
                "narrow",
                plan instanceof CutPlan known
                        ? stock.items().stream()
                                .filter(item -> item.kind().equals(known.wide().kind())
                                        && item.widthMm() != null
                                        && known.wide().widthMm() != null
                                        && item.widthMm() < known.wide().widthMm())
                                .toList()
                        : List.of());
        page.addAttribute("entered", entered);
        return "slitting-new";
    }
}
