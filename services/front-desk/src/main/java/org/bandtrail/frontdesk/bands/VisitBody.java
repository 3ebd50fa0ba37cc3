package org.bandtrail.frontdesk.bands;

import java.util.LinkedHashMap;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Form;

/** The body of a visit from its form. */
final class VisitBody {
    private VisitBody() {}

    static Map<String, Object> of(Form form, String bandId, Desk desk) {
        Form.Body body = form.body()
                .text("visitId", "personId", "crewId", "answer")
                .put("bandId", bandId)
                .happened(desk.days());
        if (form.text("answer").equals("read")) {
            body.whole("saturationPercent").text("guard").put("catches", catches(form));
        }
        if (form.has("bycatch")) {
            body.put("bycatch", bycatch(form));
        }
        if (form.text("replace").equals("yes")) {
            body.put("replace", replaced(form));
        }
        return body.done();
    }

    private static Map<String, Object> catches(Form form) {
        Map<String, Object> catches = new LinkedHashMap<>();
        for (String stage : Answers.STAGES.keySet()) {
            if (form.has("catch-" + stage)) {
                catches.put(stage, form.whole("catch-" + stage));
            }
        }
        return catches;
    }

    private static Map<String, Object> bycatch(Form form) {
        boolean seen = form.text("bycatch").equals("yes");
        Form.Body body = form.columns().put("seen", seen);
        if (seen) {
            body.text("animal", "action", "handedTo")
                    .put("alive", form.text("alive").equals("yes"));
        }
        return body.done();
    }

    private static Map<String, Object> replaced(Form form) {
        Form.Body body = form.columns().text("bagId");
        if (form.has("tapeReel")) {
            body.put("tape", Map.of("reelId", form.identity("tapeReel"), "length", form.length("tapeLength")));
        }
        if (form.has("meshReel")) {
            body.put(
                    "mesh",
                    Map.of(
                            "reelId",
                            form.identity("meshReel"),
                            "length",
                            form.length("meshLength"),
                            "oldMesh",
                            form.text("oldMesh")));
        }
        if (form.has("fastenerBatch")) {
            body.put(
                    "fasteners",
                    Map.of("batchId", form.identity("fastenerBatch"), "pieces", form.whole("fastenerPieces")));
        }
        return body.done();
    }
}
