package org.bandtrail.eventstore;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The name under which an event is on disk for ever, such as {@code reel.length-fitted}. It never follows a rename of
 * the Java class, and a name once used is never given to another event.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface StoredAs {
    /** Aggregate type, a dot, and what happened, in lower case with dashes. */
    String value();
}
