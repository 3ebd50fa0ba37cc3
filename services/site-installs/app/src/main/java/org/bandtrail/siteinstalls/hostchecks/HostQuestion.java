package org.bandtrail.siteinstalls.hostchecks;

import java.util.List;
import java.util.Optional;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/**
 * One question of a key. Beside its answers, "not sure" is always one.
 *
 * @param id within the key
 * @param weight how much its answer counts, 1 to 5
 * @param text the question
 * @param help how to look, and what to take care of
 * @param answers what can be seen
 */
public record HostQuestion(String id, int weight, String text, String help, List<Choice> answers) {
    /** The answer of whoever is not sure; it fits nothing and speaks against nothing. */
    public static final String NOT_SURE = "not-sure";

    /** Keeps its own copy. */
    public HostQuestion {
        answers = List.copyOf(answers);
    }

    /**
     * An answer.
     *
     * @param id within the question
     * @param text what is seen
     * @param drawing name of the drawing beside it, null for none
     * @param fits kinds it is a sign of
     * @param against kinds it speaks against
     * @param rulesOutAllPercent how sure this answer alone rules out every kind of the key, null if it does not
     */
    public record Choice(
            String id,
            String text,
            @Nullable String drawing,
            List<EppoCode> fits,
            List<EppoCode> against,
            @Nullable Integer rulesOutAllPercent) {
        /** Keeps its own copies. */
        public Choice {
            fits = List.copyOf(fits);
            against = List.copyOf(against);
        }
    }

    /** The answer of this id, empty for {@link #NOT_SURE} and for what is no answer. */
    public Optional<Choice> choice(String answer) {
        return answers.stream().filter(each -> each.id().equals(answer)).findFirst();
    }
}
