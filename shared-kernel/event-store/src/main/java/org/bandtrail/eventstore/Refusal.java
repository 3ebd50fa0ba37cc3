package org.bandtrail.eventstore;

/**
 * A wish that the rules do not allow. The message says which thing, which value, and what to do; it is shown to people
 * as it stands. A refusal changes nothing. Facts from the field are never refused.
 */
public abstract class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    protected Refusal(String message) {
        super(message);
    }

    /** HTTP status of the refusal: 409, the books say otherwise, unless a refusal says better. */
    public int status() {
        return 409;
    }

    /** Last part of the problem type (RFC 9457), made from the class name: {@code TooShort} gives {@code too-short}. */
    public String problem() {
        return getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(java.util.Locale.ROOT);
    }
}
