package org.bandtrail.frontdesk.kits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Packing a kit: the list is looked at first, then reserved. */
@Controller
class PackingController {
    private final Kits kits;
    private final SupplyStock stock;
    private final SiteInstalls installs;

    PackingController(Kits kits, SupplyStock stock, SiteInstalls installs) {
        this.kits = kits;
        this.stock = stock;
        this.installs = installs;
    }

    @GetMapping("/kits/new")
    String form(Model page, @RequestParam(defaultValue = "") String trees) {
        return shown(page, Entered.fresh(Map.of("trees", trees)), null);
    }

    @PostMapping("/kits/plan")
    String plan(@RequestParam MultiValueMap<String, String> sent, Model page, @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<Kit.Planned> planned = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(
                sent, () -> planned.add(kits.tell().post("/kits/plan", body(form, desk), Kit.Planned.class)));
        if (back.isPresent()) {
            return shown(page, back.get(), null);
        }
        return shown(page, new Entered(sent, null), planned.getFirst());
    }

    @PostMapping("/kits")
    String reserve(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> kits.tell().send("/kits", body(form, desk)));
        if (back.isPresent()) {
            return shown(page, back.get(), null);
        }
        String kitId = form.identity("kitId");
        Soon.readable(() -> kits.kit(kitId));
        next.addFlashAttribute(
                "done", "Kit %s is reserved for %s.".formatted(kitId, desk.person(form.text("personId"))));
        return "redirect:/kits/" + kitId;
    }

    private Map<String, Object> body(Form form, Desk desk) {
        String unit = form.has("treesUnit") ? form.text("treesUnit") : desk.smallUnit();
        TreeLines lines = new TreeLines(!form.text("lengthsAre").equals("tape"), unit, this::girth);
        Map<String, Object> rule = form.columns()
                .length("overlap", "tab", "meshExtra", "fastenerSpacing")
                .whole("fewestFasteners")
                .done();
        Form.Body body = form.body()
                .text("kitId", "depotId", "crewId", "personId", "tape", "mesh", "fastener")
                .put("trees", lines.read(form.text("trees")))
                .happened(desk.days());
        if (!rule.isEmpty()) {
            body.put("rule", rule);
        }
        if (form.has("until")) {
            body.put("until", desk.days().entered(form.text("until")).toString());
        }
        return body.done();
    }

    private @Nullable Long girth(String treeId) {
        try {
            return installs.tree(treeId).girthMm();
        } catch (NeighbourRefused refused) {
            if (refused.status() == HttpStatus.NOT_FOUND.value()) {
                return null;
            }
            throw refused;
        }
    }

    private String shown(Model page, Entered entered, Kit.@Nullable Planned planned) {
        page.addAttribute("depots", stock.depots());
        page.addAttribute("crews", stock.crews());
        Map<String, List<Object>> byKind = new HashMap<>();
        stock.items()
                .forEach(item -> byKind.computeIfAbsent(item.kind(), kind -> new ArrayList<>())
                        .add(item));
        page.addAttribute("tapes", byKind.getOrDefault("TAPE", List.of()));
        page.addAttribute("meshes", byKind.getOrDefault("MESH", List.of()));
        page.addAttribute("fasteners", byKind.getOrDefault("FASTENER", List.of()));
        page.addAttribute("rule", kits.rule());
        page.addAttribute("entered", entered);
        page.addAttribute("planned", planned);
        return "kit-new";
    }
}
