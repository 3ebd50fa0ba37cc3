package org.bandtrail.frontdesk.pages;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.Problem;

/** Something entered is probably a slip; the form comes back once to ask. */
public final class PleaseConfirm extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Problem problem;

    /** With the questions a service asked. */
    public PleaseConfirm(List<Problem.Question> questions) {
        this(
                "Is this right?",
                "These values are possible, but unusual. Change them, or confirm that they are as you mean them.",
                questions);
    }

    /** With a headline, what to do, and the questions of the page itself. */
    public PleaseConfirm(String headline, String detail, List<Problem.Question> questions) {
        super(questions.size() + " values to confirm");
        this.problem = new Problem("/problems/please-confirm", headline, 422, detail, questions);
    }

    /** The questions as the form shows them. */
    public Problem problem() {
        return problem;
    }
}
