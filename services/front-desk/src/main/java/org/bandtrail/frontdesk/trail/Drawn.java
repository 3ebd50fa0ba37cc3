package org.bandtrail.frontdesk.trail;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bandtrail.frontdesk.wording.Figures;

/** A flow with its two drawings, the wide one for a desk and the tall one for a phone. */
public record Drawn(Flow flow, TrailDrawing wide, TrailDrawing tall) {

    /** Draws flows so that their places line up. */
    public static List<Drawn> all(List<Flow> flows, Figures figures) {
        Set<String> shown = TrailDrawing.shown(flows);
        List<Drawn> drawn = new ArrayList<>();
        for (Flow flow : flows) {
            drawn.add(new Drawn(
                    flow,
                    TrailDrawing.of(flow, shown, false, figures),
                    TrailDrawing.of(flow, TrailDrawing.shown(List.of(flow)), true, figures)));
        }
        return drawn;
    }

    /** Draws one flow. */
    public static Drawn one(Flow flow, Figures figures) {
        return all(List.of(flow), figures).getFirst();
    }
}
