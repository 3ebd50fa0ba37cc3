package org.bandtrail.frontdesk.neighbours.field;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of site-installs about cut plans. */
public final class CutPlanning {
    private static final ParameterizedTypeReference<Rows<Cuts.Row>> PLANS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public CutPlanning(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** One page, the latest day first. */
    public Rows<Cuts.Row> plans(@Nullable String after) {
        return neighbour.get("/cut-plans", Rows.withAfter(Map.of("limit", "50"), after), PLANS);
    }

    /** All of them, page after page. */
    public List<Cuts.Row> allPlans() {
        return neighbour.everything(after -> neighbour.get("/cut-plans", Rows.withAfter(Map.of(), after), PLANS));
    }

    /** One plan with its reels and pieces. */
    public Cuts.Whole plan(String planId) {
        return neighbour.get("/cut-plans/" + planId, Map.of(), Cuts.Whole.class);
    }

    /** The cut sheet or the labels of its trees, as PDF. */
    public byte[] paper(String planId, String paper, Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/cut-plans/%s/%s.pdf".formatted(planId, paper), asked, byte[].class);
    }
}
