package org.bandtrail.local;

/**
 * A start that cannot succeed, for a reason the person at the keyboard can act on. The message is printed as it is,
 * without a stack trace, so it names the folder, port or setting and says what to do.
 */
public final class CannotStart extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * A refusal with advice.
     *
     * @param message what is wrong and what to do about it, in whole sentences
     */
    public CannotStart(String message) {
        super(message);
    }

    /**
     * A refusal with advice and the failure behind it.
     *
     * @param message what is wrong and what to do about it, in whole sentences
     * @param cause the failure that showed it
     */
    public CannotStart(String message, Throwable cause) {
        super(message, cause);
    }
}
