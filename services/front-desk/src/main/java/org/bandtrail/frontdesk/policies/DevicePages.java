package org.bandtrail.frontdesk.policies;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What can hang on a trunk, and what each kind takes for a girth. */
@Controller
class DevicePages {
    private final Policies policies;

    DevicePages(Policies policies) {
        this.policies = policies;
    }

    /** A part of a kind, one row of a file. */
    private record Row(Policies.Kind kind, Policies.Part part) {}

    @GetMapping("/devices")
    String kinds(
            @RequestParam(defaultValue = "") String girth,
            @RequestParam(defaultValue = "mm") String girthUnit,
            Model page,
            @ModelAttribute("desk") Desk desk) {
        List<Policies.Kind> kinds = policies.kinds();
        LinkedMultiValueMap<String, String> typed = new LinkedMultiValueMap<>();
        typed.add("girth", girth);
        typed.add("girthUnit", girthUnit);
        Map<String, Policies.Needed> needed = new TreeMap<>();
        Optional<Entered> back = Entered.unlessDone(typed, () -> {
            if (!girth.isBlank()) {
                String text = Form.withUnit(girth.strip(), girthUnit);
                kinds.forEach(kind -> needed.put(
                        kind.code(), policies.pieces(kind.code(), text, desk.metric() ? "metric" : "imperial")));
            }
        });
        page.addAttribute("kinds", kinds);
        page.addAttribute("needed", needed);
        page.addAttribute("entered", back.orElse(new Entered(typed, null)));
        return "devices";
    }

    @GetMapping("/devices.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Row>()
                .column("device", row -> row.kind().code())
                .column("name", row -> row.kind().name())
                .column("part", row -> row.part().name())
                .column("material", row -> row.part().material())
                .column("reusable", row -> row.part().reusable())
                .column("source", row -> row.part().source())
                .file(
                        "devices",
                        ending,
                        policies.kinds().stream()
                                .flatMap(kind -> kind.parts().stream().map(part -> new Row(kind, part)))
                                .toList());
    }
}
