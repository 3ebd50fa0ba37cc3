package org.bandtrail.testing;

import java.lang.annotation.Annotation;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An event record and how it is stored. The annotations are found by name and read by reflection, because this module
 * must not depend on the event store, which depends on it for its own tests.
 */
record StoredType(Class<?> type, String name, String revision) {
    static final String STORED_AS = "org.bandtrail.eventstore.StoredAs";
    static final String REVISION = "org.axonframework.serialization.Revision";

    /** All records below the given sealed interfaces. An assertion error names a record that lacks an annotation. */
    static List<StoredType> of(Class<?>... events) {
        List<StoredType> types = new ArrayList<>();
        for (Class<?> event : events) {
            collect(event, types);
        }
        if (types.isEmpty()) {
            throw new AssertionError("No event type was given, so nothing would be checked.");
        }
        return types;
    }

    private static void collect(Class<?> type, List<StoredType> types) {
        if (type.isSealed()) {
            for (Class<?> permitted : type.getPermittedSubclasses()) {
                collect(permitted, types);
            }
            return;
        }
        String name = value(type, STORED_AS);
        String revision = value(type, REVISION);
        if (name == null || revision == null) {
            throw new AssertionError(
                    "%s has no @StoredAs or no @Revision. Every stored event needs both.".formatted(type));
        }
        types.add(new StoredType(type, name, revision));
    }

    private static @Nullable String value(Class<?> type, String annotationName) {
        for (Annotation annotation : type.getAnnotations()) {
            Class<? extends Annotation> kind = annotation.annotationType();
            if (kind.getName().equals(annotationName)) {
                try {
                    return (String) kind.getMethod("value").invoke(annotation);
                } catch (ReflectiveOperationException | ClassCastException changed) {
                    throw new AssertionError(
                            "@%s has no text called value any more.".formatted(annotationName), changed);
                }
            }
        }
        return null;
    }
}
