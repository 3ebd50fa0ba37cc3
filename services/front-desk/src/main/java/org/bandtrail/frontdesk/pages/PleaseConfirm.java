package org.bandtrail.frontdesk.pages;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.Problem;

/** Something entered is probably a slip; the form comes back once to ask. */
public final class PleaseConfirm extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Problem problem;

    /** With the questions a service asked. */
    public PleaseConfirm(List<Problem.Question> questions) {
        super(questions.size() + " values to confirm");
        this.problem = new Problem(
                "/problems/please-confirm",
                "Is this right?",
                422,
                "These values are possible, but unusual. Change them, or confirm that they are as you mean them.",
                questions);
    }

    /** The questions as the form shows them. */
    public Problem problem() {
        return problem;
    }
}
