package org.bandtrail.frontdesk.neighbours.depot;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about counts and about what does not add up, asked of supply-stock. */
public final class Counting {
    private static final ParameterizedTypeReference<Rows<Counted.Count>> COUNTS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Counted.Due>> PLAN = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Counted.RulesInForce>> RULES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Counted.Question>> QUESTIONS =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Counting(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Counts, the newest first. */
    public Rows<Counted.Count> counts(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/counts", asked, COUNTS);
    }

    /** All counts. */
    public List<Counted.Count> allCounts() {
        return neighbour.everything(after -> counts(Rows.withAfter(Map.of("limit", "1000"), after)));
    }

    /** One count with its lines. */
    public Counted.Whole count(String countId) {
        return neighbour.get("/counts/" + countId, Map.of(), Counted.Whole.class);
    }

    /** What is to be counted when, the most urgent first. */
    public Rows<Counted.Due> plan(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/count-plan", asked, PLAN);
    }

    /** The whole plan. */
    public List<Counted.Due> wholePlan() {
        return neighbour.everything(after -> plan(Rows.withAfter(Map.of("limit", "1000"), after)));
    }

    /** The rules of counting that hold now. */
    public Counted.RulesInForce rules() {
        return neighbour.get("/counts/rules", Map.of(), RULES).rows().getFirst();
    }

    /** What does not add up, the oldest first. */
    public Rows<Counted.Question> questions(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/discrepancies", asked, QUESTIONS);
    }

    /** All that does not add up. */
    public List<Counted.Question> allQuestions() {
        return neighbour.everything(after -> questions(Rows.withAfter(Map.of("limit", "200"), after)));
    }
}
