package org.bandtrail.siteinstalls.cutplans;

import org.bandtrail.eventstore.KernelJson;
import tools.jackson.databind.json.JsonMapper;

/** The parts of a plan as text in its row, written as stored events are: lengths in whole millimetres. */
final class PartsJson {
    private static final JsonMapper JSON =
            JsonMapper.builder().addModule(KernelJson.stored()).build();

    private PartsJson() {}

    static String write(CutPlanView.Parts parts) {
        return JSON.writeValueAsString(parts);
    }

    static CutPlanView.Parts read(String text) {
        return JSON.readValue(text, CutPlanView.Parts.class);
    }
}
