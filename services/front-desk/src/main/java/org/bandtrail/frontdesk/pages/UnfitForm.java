package org.bandtrail.frontdesk.pages;

/** A form that cannot be read into a command. The message names the field, the value and what to write instead. */
public final class UnfitForm extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Says which field and what to write instead. */
    public UnfitForm(String message) {
        super(message);
    }
}
