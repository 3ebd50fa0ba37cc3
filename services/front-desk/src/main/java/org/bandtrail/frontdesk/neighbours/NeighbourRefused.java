package org.bandtrail.frontdesk.neighbours;

/** A service understood the request and said no, or not yet. */
public final class NeighbourRefused extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Problem problem;
    private final int status;

    NeighbourRefused(int status, Problem problem) {
        super(problem.headline() + ": " + problem.detail());
        this.status = status;
        this.problem = problem;
    }

    /** What the service said. */
    public Problem problem() {
        return problem;
    }

    /** The HTTP status, 400 to 499. */
    public int status() {
        return status;
    }
}
