package org.bandtrail.frontdesk.neighbours.field;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of site-installs about work plans, and the trees to plan. */
public final class WorkPlanning {
    private static final ParameterizedTypeReference<Rows<Plan.Row>> PLANS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Installs.Tree>> TREES = new ParameterizedTypeReference<>() {};
    private static final String LONGEST_PAGE = "500";
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public WorkPlanning(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** The plans that touch these days; without what is done or called off if only open ones are asked for. */
    public List<Plan.Row> plans(LocalDate from, LocalDate until, boolean open) {
        Map<String, String> asked =
                Map.of("from", from.toString(), "until", until.toString(), "open", String.valueOf(open));
        return neighbour.everything(after -> neighbour.get("/work-plans", Rows.withAfter(asked, after), PLANS));
    }

    /** All plans there ever were. */
    public List<Plan.Row> allPlans() {
        return neighbour.everything(after -> neighbour.get("/work-plans", Rows.withAfter(Map.of(), after), PLANS));
    }

    /** One plan. */
    public Plan.Whole plan(String planId) {
        return neighbour.get("/work-plans/" + planId, Map.of(), Plan.Whole.class);
    }

    /** What a plan would need. */
    public Plan.Checked check(Object body) {
        return neighbour.post("/work-plans/check", body, Plan.Checked.class);
    }

    /** The trees of a site that a plan can choose from. */
    public Rows<Installs.Tree> choice(String site, String only, String text) {
        return neighbour.get("/trees", Map.of("site", site, "only", only, "q", text, "limit", LONGEST_PAGE), TREES);
    }
}
