package org.bandtrail.frontdesk.sites;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The forms that change a site. */
@Controller
class SiteChangesController {
    private static final String CHANGE = "/sites/{siteId}/";
    private final Sites sites;
    private final JsonMapper json;

    SiteChangesController(Sites sites, JsonMapper json) {
        this.sites = sites;
        this.json = json;
    }

    @PostMapping(CHANGE + "correct")
    String correct(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "correct",
                sent,
                page,
                next,
                () -> form.body()
                        .text("name", "accessNotes")
                        .decimal("lat", "lon")
                        .done());
    }

    @PostMapping(CHANGE + "boundary")
    String boundary(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "boundary",
                sent,
                page,
                next,
                () -> form.body().put("boundary", read(form.text("boundary"))).done());
    }

    private JsonNode read(String text) {
        try {
            return json.readTree(text.isEmpty() ? "{}" : text);
        } catch (JacksonException unreadable) {
            throw new UnfitForm("The boundary is not GeoJSON: " + unreadable.getOriginalMessage()
                    + ". Copy the whole text from the drawing program, from the first { to the last }.");
        }
    }

    @PostMapping(CHANGE + "hours")
    String hours(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "hours",
                sent,
                page,
                next,
                () -> form.body()
                        .put("hours", Map.of("weekly", weekly(form), "exceptions", exceptions(form)))
                        .done());
    }

    private static List<Map<String, String>> weekly(Form form) {
        List<Map<String, String>> rows = new ArrayList<>();
        form.lines("day", "from", "until").values().stream()
                .filter(line -> !line.getOrDefault("from", "").isEmpty()
                        || !line.getOrDefault("until", "").isEmpty())
                .forEach(rows::add);
        return rows;
    }

    private static List<Map<String, Object>> exceptions(Form form) {
        List<Map<String, Object>> rows = new ArrayList<>();
        form.lines("singleDay", "singleFrom", "singleUntil", "singleReason").values().stream()
                .filter(line -> !line.getOrDefault("singleDay", "").isEmpty())
                .forEach(line -> {
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("day", line.getOrDefault("singleDay", ""));
                    putTime(row, "from", line.getOrDefault("singleFrom", ""));
                    putTime(row, "until", line.getOrDefault("singleUntil", ""));
                    row.put("reason", line.getOrDefault("singleReason", ""));
                    rows.add(row);
                });
        return rows;
    }

    private static void putTime(Map<String, Object> row, String name, String time) {
        if (!time.isEmpty()) {
            row.put(name, time);
        }
    }

    @PostMapping(CHANGE + "hazards")
    String hazards(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "hazards",
                sent,
                page,
                next,
                () -> form.body()
                        .put(
                                "hazards",
                                form.filled("kind").stream()
                                        .map(kind -> Map.of("kind", kind, "note", form.text("note-" + kind)))
                                        .toList())
                        .done());
    }

    @PostMapping(CHANGE + "close")
    String close(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "close",
                sent,
                page,
                next,
                () -> form.body().text("on", "reason").done());
    }

    @PostMapping(CHANGE + "reopen")
    String reopen(
            @PathVariable String siteId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        return done(
                siteId,
                "reopen",
                sent,
                page,
                next,
                () -> form.body().text("reason").done());
    }

    private String done(
            String siteId,
            String what,
            MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            Supplier<Map<String, Object>> body) {
        int before = sites.one(siteId).history().size();
        List<String> notes = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Ground.Changed changed =
                    sites.tell().post("/sites/" + siteId + "/" + what, body.get(), Ground.Changed.class);
            if (changed.notes() != null) {
                notes.addAll(changed.notes());
            }
        });
        if (back.isPresent()) {
            return SiteController.shown(page, sites, siteId, back.get());
        }
        // A form sent without a change adds nothing; then there is nothing to wait for beyond the usual patience.
        Soon.until(() -> sites.one(siteId).history().size() > before);
        next.addFlashAttribute("done", ("The site is changed. " + String.join(" ", notes)).strip());
        return "redirect:/sites/" + siteId;
    }
}
