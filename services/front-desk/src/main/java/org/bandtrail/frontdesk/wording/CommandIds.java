package org.bandtrail.frontdesk.wording;

/** Gives each form its own command id when it is drawn, so that sending the form twice does the work once. */
@FunctionalInterface
public interface CommandIds {
    /** A new UUID version 7 as text, never given before. */
    String next();
}
