package org.bandtrail.frontdesk.plans;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.jspecify.annotations.Nullable;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** The form of a plan: its fields as the service reads them, and a plan as the form shows it. */
final class PlanForm {
    private PlanForm() {}

    /**
     * The plan the form describes.
     *
     * @param metric whether the crew measures in millimetres
     * @throws UnfitForm if no tree is chosen
     */
    static Map<String, Object> plan(Form form, boolean metric) {
        List<Map<String, Object>> trees = new ArrayList<>();
        for (String tree : form.filled("tree")) {
            Map<String, Object> line = new HashMap<>(Map.of("treeId", tree));
            if (form.has("bands-" + tree)) {
                line.put("bands", form.whole("bands-" + tree));
            }
            trees.add(line);
        }
        if (trees.isEmpty()) {
            throw new UnfitForm("No tree is chosen. Tick the trees that get a band.");
        }
        return form.columns()
                .text(
                        "day",
                        "lastDay",
                        "crewId",
                        "depotId",
                        "tape",
                        "mesh",
                        "fastener",
                        "other",
                        "device",
                        "pest",
                        "programme")
                .text("putUpFrom", "putUpUntil", "order", "note")
                .put("measure", metric ? "metric" : "imperial")
                .put("trees", trees)
                .done();
    }

    /** A plan as the form shows it to be changed. */
    static Entered of(Plan.Whole plan) {
        MultiValueMap<String, String> values = new LinkedMultiValueMap<>();
        values.add("day", plan.day().toString());
        values.add("lastDay", plan.lastDay().toString());
        values.add("crewId", plan.crewId());
        values.add("depotId", plan.depotId());
        values.add("device", plan.device());
        add(values, "tape", plan.tapeCode());
        add(values, "other", plan.otherCode());
        add(values, "programme", plan.programme());
        values.add("note", plan.note());
        add(values, "mesh", plan.meshCode());
        add(values, "fastener", plan.fastenerCode());
        add(values, "pest", plan.pest());
        add(values, "putUpFrom", plan.putUpFrom());
        add(values, "putUpUntil", plan.putUpUntil());
        for (Plan.Line line : plan.walk()) {
            values.add("tree", line.treeId());
            values.add("bands-" + line.treeId(), String.valueOf(line.bands()));
        }
        return new Entered(values, null);
    }

    private static void add(MultiValueMap<String, String> values, String field, @Nullable Object value) {
        if (value != null) {
            values.add(field, value.toString());
        }
    }
}
